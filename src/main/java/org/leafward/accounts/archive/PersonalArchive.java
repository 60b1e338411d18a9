package org.leafward.accounts.archive;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Brought;
import org.leafward.measure.BadInput;
import org.leafward.measure.CsvText;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * A ZIP with everything as JSON, each table as CSV (RFC 4180, UTF-8) and the calendar as
 * iCalendar. It is read back from its CSV files, or from the JSON when there are none.
 */
@Component
public class PersonalArchive {

	/** Largest file that is taken, packed: 2 MiB. */
	public static final int MOST = 2 << 20;

	private static final int MOST_UNPACKED = 32 << 20;

	private static final int MOST_FILES = 50;

	private static final int MOST_ROWS = 20_000;

	private static final String JSON = "leafward.json";

	private final JsonMapper json;

	/**
	 * Creates it.
	 * @param json writes and reads JSON
	 */
	public PersonalArchive(JsonMapper json) {
		this.json = json;
	}

	/**
	 * Packs.
	 * @param tables rows by name of the table
	 * @param files more files
	 * @return the ZIP
	 */
	public byte[] pack(Map<String, List<Map<String, Object>>> tables, Map<String, byte[]> files) {
		ByteArrayOutputStream octets = new ByteArrayOutputStream();
		try (ZipOutputStream zip = new ZipOutputStream(octets, StandardCharsets.UTF_8)) {
			add(zip, JSON, this.json.writer().with(SerializationFeature.INDENT_OUTPUT).writeValueAsBytes(tables));
			for (Map.Entry<String, List<Map<String, Object>>> table : tables.entrySet()) {
				if (!table.getValue().isEmpty()) {
					add(zip, table.getKey() + ".csv", csv(table.getValue()).getBytes(StandardCharsets.UTF_8));
				}
			}
			for (Map.Entry<String, byte[]> file : files.entrySet()) {
				add(zip, file.getKey(), file.getValue());
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return octets.toByteArray();
	}

	private static void add(ZipOutputStream zip, String name, byte[] content) throws IOException {
		zip.putNextEntry(new ZipEntry(name));
		zip.write(content);
		zip.closeEntry();
	}

	private static String csv(List<Map<String, Object>> rows) {
		List<List<String>> table = new ArrayList<>();
		table.add(List.copyOf(rows.get(0).keySet()));
		rows.forEach((row) -> table.add(row.values().stream().map(PersonalArchive::cell).toList()));
		return CsvText.write(table);
	}

	/** Texts only: a negative number is no formula. */
	private static String cell(@Nullable Object value) {
		String text = (value != null) ? value.toString() : "";
		return (value instanceof Number) ? text : CsvText.safe(text);
	}

	/**
	 * Unpacks.
	 * @param octets a ZIP that {@link #pack} made, or one with some of its files
	 * @return the tables in it
	 * @throws BadInput when it is none, or too large
	 */
	public Brought unpack(byte[] octets) {
		if (octets.length > MOST) {
			throw new BadInput("The file is larger than 2 MB", "file",
					"take out what need not come back, such as photos and mails");
		}
		Map<String, String> files = read(octets);
		Map<String, List<Brought.Row>> tables = new LinkedHashMap<>();
		for (Map.Entry<String, String> file : files.entrySet()) {
			if (file.getKey().endsWith(".csv")) {
				tables.put(file.getKey().replaceFirst("\\.csv$", ""), table(file.getKey(), file.getValue()));
			}
		}
		if (tables.isEmpty() && files.containsKey(JSON)) {
			tables.putAll(tables(files.getOrDefault(JSON, "")));
		}
		if (tables.isEmpty()) {
			throw new BadInput("There is neither a table nor leafward.json in this file", "file",
					"choose the ZIP file that “Take everything away” gave");
		}
		return new Brought(tables);
	}

	private static Map<String, String> read(byte[] octets) {
		Map<String, String> files = new LinkedHashMap<>();
		int unpacked = 0;
		try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(octets), StandardCharsets.UTF_8)) {
			for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
				if (files.size() >= MOST_FILES) {
					throw tooMuch();
				}
				byte[] content = zip.readNBytes(MOST_UNPACKED - unpacked + 1);
				unpacked += content.length;
				if (unpacked > MOST_UNPACKED) {
					throw tooMuch();
				}
				// Names are only looked up, nothing is ever written under them.
				String name = entry.getName();
				if (name.endsWith(".csv") || name.equals(JSON)) {
					files.put(name, text(name, content));
				}
			}
		}
		catch (IOException | IllegalArgumentException ex) {
			throw new BadInput("The file is damaged", "file", "take it away anew, and don’t change it on the way");
		}
		return files;
	}

	private static BadInput tooMuch() {
		return new BadInput("There is more than 32 MB or 50 files in it", "file",
				"choose the ZIP file that “Take everything away” gave");
	}

	private static String text(String name, byte[] content) {
		try {
			return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
		}
		catch (CharacterCodingException ex) {
			throw new BadInput("%s is not written in UTF-8".formatted(name), name, "save it as CSV in UTF-8");
		}
	}

	private static List<Brought.Row> table(String name, String text) {
		List<List<String>> table = lines(name, text);
		List<String> columns = table.isEmpty() ? List.of() : table.get(0);
		if (!table.isEmpty() && columns.stream().anyMatch(String::isBlank)) {
			throw noTable(name);
		}
		List<Brought.Row> rows = new ArrayList<>();
		for (int i = 1; i < table.size(); i++) {
			String where = "%s, row %d".formatted(name, i + 1);
			List<String> cells = table.get(i);
			if (rows.size() >= MOST_ROWS) {
				throw new BadInput("%s has more than %d rows".formatted(name, MOST_ROWS), name, "bring less at a time");
			}
			if (cells.size() != columns.size()) {
				throw new BadInput("a row has %d values for %d columns".formatted(cells.size(), columns.size()), where,
						"give each column a value, which may be empty");
			}
			Map<String, String> values = new LinkedHashMap<>();
			for (int j = 0; j < cells.size(); j++) {
				values.put(columns.get(j), CsvText.plain(cells.get(j)));
			}
			rows.add(new Brought.Row(where, values));
		}
		return rows;
	}

	private static List<List<String>> lines(String name, String text) {
		try {
			return CsvText.read(text, MOST_ROWS + 1);
		}
		catch (BadInput ex) {
			throw noTable(name);
		}
	}

	private static BadInput noTable(String name) {
		return new BadInput("%s is no table".formatted(name), name,
				"write it with commas and double quotes as RFC 4180 says");
	}

	private Map<String, List<Brought.Row>> tables(String text) {
		Map<String, List<Brought.Row>> tables = new LinkedHashMap<>();
		try {
			for (Map.Entry<String, JsonNode> table : this.json.readTree(text).properties()) {
				List<Brought.Row> rows = new ArrayList<>();
				for (JsonNode row : table.getValue()) {
					Map<String, String> values = new LinkedHashMap<>();
					row.properties()
						.forEach((value) -> values.put(value.getKey(),
								value.getValue().isNull() ? "" : value.getValue().asString()));
					rows.add(new Brought.Row("%s, %s %d".formatted(JSON, table.getKey(), rows.size() + 1), values));
				}
				tables.put(table.getKey(), rows);
			}
		}
		catch (JacksonException ex) {
			throw new BadInput("leafward.json is no JSON", JSON, "take it away anew");
		}
		return tables;
	}

}
