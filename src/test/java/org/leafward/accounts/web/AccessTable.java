package org.leafward.accounts.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What each address answers to each caller, from {@code access.csv}: cells between bars,
 * lines with # are remarks.
 */
record AccessTable(List<String> callers, List<Row> rows) {

	private static final int BEFORE_CALLERS = 3;

	/**
	 * A line.
	 *
	 * @param method HTTP method
	 * @param path as the controller has it
	 * @param send what is sent: JSON, or parameters of a form; may be empty
	 * @param outcomes what is expected, by caller
	 */
	record Row(String method, String path, String send, Map<String, String> outcomes) {

		String address() {
			return this.method + " " + this.path;
		}

	}

	static AccessTable read() {
		try (InputStream in = Objects.requireNonNull(AccessTable.class.getResourceAsStream("/access.csv"))) {
			List<List<String>> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
				.filter((line) -> !line.isBlank() && !line.startsWith("#"))
				.map((line) -> Arrays.stream(line.split("\\|", -1)).map(String::strip).toList())
				.toList();
			List<String> head = lines.get(0);
			List<String> callers = head.subList(BEFORE_CALLERS, head.size());
			return new AccessTable(callers, lines.stream().skip(1).map((cells) -> row(cells, callers)).toList());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static Row row(List<String> cells, List<String> callers) {
		if (cells.size() != callers.size() + BEFORE_CALLERS) {
			throw new IllegalStateException("%d cells in %s".formatted(cells.size(), cells));
		}
		Map<String, String> outcomes = new LinkedHashMap<>();
		for (int i = 0; i < callers.size(); i++) {
			outcomes.put(callers.get(i), cells.get(i + BEFORE_CALLERS));
		}
		return new Row(cells.get(0), cells.get(1), cells.get(2), outcomes);
	}

}
