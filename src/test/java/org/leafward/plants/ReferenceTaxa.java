package org.leafward.plants;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.support.SharedData;

/** The reference tables of species and of crops, when they are there. */
final class ReferenceTaxa {

	private ReferenceTaxa() {
	}

	/**
	 * The rows of a table.
	 * @param name path below the shared folder
	 * @return column name to field, by row
	 */
	static List<Map<String, String>> rows(String name) {
		try {
			List<List<String>> rows = Files.readAllLines(SharedData.file(name))
				.stream()
				.map(ReferenceTaxa::row)
				.toList();
			return rows.subList(1, rows.size()).stream().map((row) -> {
				Map<String, String> fields = new LinkedHashMap<>();
				for (int i = 0; i < row.size(); i++) {
					fields.put(rows.get(0).get(i), row.get(i));
				}
				return fields;
			}).toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static List<String> row(String line) {
		List<String> fields = new ArrayList<>();
		StringBuilder field = new StringBuilder();
		boolean quoted = false;
		for (char c : line.toCharArray()) {
			if (c == '"') {
				quoted = !quoted;
			}
			else if (c == ',' && !quoted) {
				fields.add(field.toString());
				field.setLength(0);
			}
			else {
				field.append(c);
			}
		}
		fields.add(field.toString());
		return fields;
	}

}
