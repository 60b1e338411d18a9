package org.leafward.accounts;

import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.time.OffsetDateTime;
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
			values.put(columns.getColumnLabel(i), value(row, i, columns.getColumnType(i)));
		}
		return values;
	}

	private static @Nullable Object value(ResultSet row, int column, int type) throws SQLException {
		return switch (type) {
			case Types.TIMESTAMP, Types.TIMESTAMP_WITH_TIMEZONE -> {
				OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
				yield (time != null) ? time.toInstant().toString() : null;
			}
			case Types.DATE -> {
				LocalDate day = row.getObject(column, LocalDate.class);
				yield (day != null) ? day.toString() : null;
			}
			default -> plain(row.getObject(column));
		};
	}

	private static @Nullable Object plain(@Nullable Object value) {
		return (value == null || value instanceof Number || value instanceof Boolean) ? value : value.toString();
	}

}
