package org.leafward.accounts;

import java.sql.Date;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Rows of a query as {@link PersonalData} gives them. */
public final class Rows {

	private Rows() {
	}

	/**
	 * Maps a row of a query; its columns' labels become the names.
	 * @param row the row
	 * @param number not looked at
	 * @return values that JSON and CSV can carry
	 * @throws SQLException when the database says so
	 */
	public static Map<String, @Nullable Object> plain(ResultSet row, int number) throws SQLException {
		ResultSetMetaData columns = row.getMetaData();
		Map<String, @Nullable Object> values = new LinkedHashMap<>();
		for (int i = 1; i <= columns.getColumnCount(); i++) {
			values.put(columns.getColumnLabel(i), plain(row.getObject(i)));
		}
		return values;
	}

	private static @Nullable Object plain(@Nullable Object value) {
		if (value instanceof Timestamp time) {
			return time.toInstant().toString();
		}
		if (value instanceof Date day) {
			return day.toLocalDate().toString();
		}
		return (value == null || value instanceof Number || value instanceof Boolean) ? value : value.toString();
	}

}
