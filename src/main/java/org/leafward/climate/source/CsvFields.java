package org.leafward.climate.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Splits lines of comma-separated values (RFC 4180, but without line breaks in fields).
 */
public final class CsvFields {

	private CsvFields() {
	}

	/**
	 * Splits a line.
	 * @param line without its line break
	 * @return the fields without their quotes and without blanks around, empty when a
	 * quote is left open
	 */
	public static Optional<List<String>> of(String line) {
		List<String> fields = new ArrayList<>();
		StringBuilder field = new StringBuilder();
		boolean quoted = false;
		for (int at = 0; at < line.length(); at++) {
			char symbol = line.charAt(at);
			if (symbol == '"') {
				if (quoted && at + 1 < line.length() && line.charAt(at + 1) == '"') {
					field.append('"');
					at++;
				}
				else {
					quoted = !quoted;
				}
			}
			else if (symbol == ',' && !quoted) {
				fields.add(field.toString().strip());
				field.setLength(0);
			}
			else {
				field.append(symbol);
			}
		}
		fields.add(field.toString().strip());
		return quoted ? Optional.empty() : Optional.of(fields);
	}

}
