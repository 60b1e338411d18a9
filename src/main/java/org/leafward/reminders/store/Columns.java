package org.leafward.reminders.store;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Rows turned into one array for each column, to be written by one statement. */
final class Columns {

	private final List<@Nullable Object[]> rows = new ArrayList<>();

	void add(@Nullable Object... row) {
		this.rows.add(row);
	}

	boolean isEmpty() {
		return this.rows.isEmpty();
	}

	/** One array for each column, of the type of its first value. */
	List<Object> arrays() {
		List<Object> arrays = new ArrayList<>();
		for (int column = 0; column < this.rows.get(0).length; column++) {
			arrays.add(array(column));
		}
		return arrays;
	}

	private Object array(int column) {
		List<@Nullable Object> values = new ArrayList<>();
		Object first = null;
		for (@Nullable
		Object[] row : this.rows) {
			values.add(row[column]);
			first = (first != null) ? first : row[column];
		}
		if (first instanceof UUID) {
			return values.toArray(new UUID[0]);
		}
		if (first instanceof Integer) {
			return values.toArray(new Integer[0]);
		}
		// The driver takes no arrays of dates; as text (ISO 8601) the statement's casts
		// read them.
		@Nullable String[] texts = new String[values.size()];
		for (int row = 0; row < texts.length; row++) {
			Object value = values.get(row);
			texts[row] = (value != null) ? value.toString() : null;
		}
		return texts;
	}

}
