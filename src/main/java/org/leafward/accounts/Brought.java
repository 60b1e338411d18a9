package org.leafward.accounts;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;

/** Tables that somebody brings back, and what became of the identifiers in them. */
public final class Brought {

	private final Map<String, List<Row>> tables;

	private final Map<String, String> identifiers = new HashMap<>();

	private final Map<String, Integer> counts = new LinkedHashMap<>();

	/**
	 * Creates it.
	 * @param tables rows by name of the table
	 */
	public Brought(Map<String, List<Row>> tables) {
		this.tables = Map.copyOf(tables);
	}

	/**
	 * A row as it was written.
	 *
	 * @param where the file and the line, for example "sites.csv, line 3"
	 * @param values by name of the column
	 */
	public record Row(String where, Map<String, String> values) {

		/**
		 * A value.
		 * @param column name of the column
		 * @return null when it is empty or missing
		 */
		public @Nullable String get(String column) {
			String value = this.values.get(column);
			return (value == null || value.isBlank()) ? null : value;
		}

		/**
		 * A truth value.
		 * @param column name of the column
		 * @return whether it says true
		 */
		public boolean is(String column) {
			return "true".equalsIgnoreCase(this.values.get(column));
		}

	}

	/**
	 * Goes through a table. What is wrong with a row is told with its place.
	 * @param table its name
	 * @param take what to do with a row
	 * @throws BadInput at the first row that can't be used
	 */
	public void each(String table, Consumer<Row> take) {
		for (Row row : this.tables.getOrDefault(table, List.of())) {
			try {
				take.accept(row);
				this.counts.merge(table, 1, Integer::sum);
			}
			catch (BadInput ex) {
				throw new BadInput(ex.what(), row.where() + ", " + ex.where(), ex.mend());
			}
		}
	}

	/**
	 * Notes what a thing is called here.
	 * @param row that it was made from, with a column {@code id}
	 * @param here its new identifier
	 */
	public void is(Row row, Object here) {
		String id = row.get("id");
		if (id != null) {
			this.identifiers.put(id, here.toString());
		}
	}

	/**
	 * What something is called here.
	 * @param row that points to it
	 * @param column name of the column
	 * @return null when the row points to nothing
	 * @throws BadInput when it points to something that was not brought
	 */
	public @Nullable String here(Row row, String column) {
		String id = row.get(column);
		if (id == null) {
			return null;
		}
		String here = this.identifiers.get(id);
		if (here == null) {
			throw new BadInput("'%s' is in none of the tables".formatted(id), column,
					"bring the table that has it along, as it was taken away");
		}
		return here;
	}

	/**
	 * How many rows were used.
	 * @return by name of the table, in the order in which they were taken
	 */
	public Map<String, Integer> counts() {
		return Collections.unmodifiableMap(this.counts);
	}

}
