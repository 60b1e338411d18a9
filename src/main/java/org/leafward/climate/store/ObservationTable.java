package org.leafward.climate.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Array;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.RecordOverlay;
import org.postgresql.PGConnection;
import org.postgresql.copy.PGCopyOutputStream;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.stereotype.Component;

/**
 * Reads and writes {@code climate.observation_month}: a row for each month of a station,
 * in it for each element an array with a value for each day.
 */
@Component
public class ObservationTable {

	private static final Element[] ELEMENTS = Element.values();

	/** The arrays in the order of {@link Element}. */
	private static final String COLUMNS = "month, tmin_tenths_celsius, tmax_tenths_celsius, precipitation_tenths_mm, snow_depth_mm, wind_tenths_metres_per_second";

	private static final String SELECT = "select " + COLUMNS + " from climate.observation_month where station_id = ? ";

	private static final String COPY = "copy climate.observation_month (station_id, " + COLUMNS + ") from stdin";

	private static final String READ = "select " + COLUMNS + ", s.record_version"
			+ " from climate.station s left join climate.observation_month o on o.station_id = s.id where s.id = ?";

	/** Follows the month and the arrays. */
	private static final int VERSION_COLUMN = ELEMENTS.length + 2;

	private final JdbcTemplate jdbc;

	ObservationTable(JdbcTemplate jdbc) {
		this.jdbc = jdbc;
	}

	/**
	 * Lays a record over the stored one. Months that change are written anew, the others
	 * stay. Must run in a transaction that holds {@link StationTable#lock} of the
	 * station.
	 * @param station whose record
	 * @param record the new values; days and elements it lacks stay as they are
	 * @return what changed
	 */
	public RecordOverlay merge(StationId station, DailyRecord record) {
		RecordOverlay overlay = new RecordOverlay(storedBeside(station, record), record);
		if (!overlay.months().isEmpty()) {
			delete(station, overlay);
			this.jdbc.execute((ConnectionCallback<Long>) (connection) -> copy(connection, station, overlay));
		}
		return overlay;
	}

	/** What is stored for the months that a record spans. */
	private DailyRecord storedBeside(StationId station, DailyRecord record) {
		Optional<LocalDate> first = record.firstDay();
		Optional<LocalDate> last = record.lastDay();
		return (first.isEmpty() || last.isEmpty()) ? DailyRecord.builder().build()
				: query("and month between ? and ?", station.value(), first.get().withDayOfMonth(1), last.get());
	}

	private void delete(StationId station, RecordOverlay overlay) {
		String months = overlay.months()
			.stream()
			.map((month) -> month.atDay(1).toString())
			.collect(Collectors.joining(",", "{", "}"));
		this.jdbc.update("delete from climate.observation_month where station_id = ? and month = any (?::date[])",
				station.value(), months);
	}

	private static long copy(Connection connection, StationId station, RecordOverlay overlay) throws SQLException {
		PGConnection postgres = connection.unwrap(PGConnection.class);
		try (PGCopyOutputStream out = new PGCopyOutputStream(postgres, COPY, 1 << 16)) {
			StringBuilder line = new StringBuilder();
			for (YearMonth month : overlay.months()) {
				line.setLength(0);
				line.append(station.value()).append('\t').append(month.atDay(1));
				for (Element element : ELEMENTS) {
					append(line.append('\t'), month, element, overlay);
				}
				out.write(line.append('\n').toString().getBytes(StandardCharsets.US_ASCII));
			}
			return out.endCopy();
		}
		catch (IOException ex) {
			throw new DataAccessResourceFailureException("copying observations failed", ex);
		}
	}

	/** An array as PostgreSQL writes it, or its null when there is no value. */
	private static void append(StringBuilder line, YearMonth month, Element element, RecordOverlay overlay) {
		int begin = line.length();
		boolean any = false;
		long first = month.atDay(1).toEpochDay();
		for (int day = 0; day < month.lengthOfMonth(); day++) {
			short value = overlay.value(element, first + day);
			line.append((day == 0) ? '{' : ',');
			if (value != DailyRecord.MISSING) {
				line.append(value);
				any = true;
			}
			else {
				line.append("NULL");
			}
		}
		line.append('}');
		if (!any) {
			line.setLength(begin);
			line.append("\\N");
		}
	}

	/**
	 * Reads the whole record of a station. One statement, so that record and version
	 * belong together.
	 * @param station whose record
	 * @return the record with its version
	 */
	public StoredRecord read(StationId station) {
		DailyRecord.Builder builder = DailyRecord.builder();
		long[] version = new long[1];
		this.jdbc.query(READ, (row) -> {
			version[0] = row.getLong(VERSION_COLUMN);
			take(row, builder);
		}, station.value());
		return new StoredRecord(builder.build(), version[0]);
	}

	public Optional<LocalDate> firstDay(StationId station) {
		return query("order by month limit 1", station.value()).firstDay();
	}

	public Optional<LocalDate> lastDay(StationId station) {
		return query("order by month desc limit 1", station.value()).lastDay();
	}

	private DailyRecord query(String which, Object... parameters) {
		DailyRecord.Builder builder = DailyRecord.builder();
		RowCallbackHandler taking = (row) -> take(row, builder);
		this.jdbc.query(SELECT + which, taking, parameters);
		return builder.build();
	}

	private static void take(ResultSet row, DailyRecord.Builder builder) throws SQLException {
		LocalDate month = row.getObject(1, LocalDate.class);
		for (Element element : ELEMENTS) {
			Array array = row.getArray(element.ordinal() + 2);
			if (month != null && array != null) {
				@Nullable Short[] values = (Short[]) array.getArray();
				for (int day = 0; day < values.length; day++) {
					Short value = values[day];
					if (value != null) {
						builder.set(element, month.plusDays(day), value);
					}
				}
			}
		}
	}

}
