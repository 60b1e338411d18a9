package org.leafward.climate.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.postgresql.PGConnection;
import org.postgresql.copy.PGCopyOutputStream;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Reads and writes {@code climate.observation}. */
@Component
public class ObservationTable {

	private static final Element[] ELEMENTS = Element.values();

	/** In the order of {@link Element}. */
	private static final String COLUMNS = "tmin_tenths_celsius, tmax_tenths_celsius, precipitation_tenths_mm, snow_depth_mm, wind_tenths_metres_per_second";

	private static final String INCOMING = """
			create temporary table incoming_observation (day date, tmin smallint, tmax smallint, prcp smallint,
				snwd smallint, awnd smallint) on commit drop""";

	/** A value that is missing in the new data never erases an old one. */
	private static final String MERGE = """
			with merged as (
				insert into climate.observation as o (station_id, day, %s)
				select ?, day, tmin, tmax, prcp, snwd, awnd from incoming_observation
				on conflict (station_id, day) do update set
					tmin_tenths_celsius = coalesce(excluded.tmin_tenths_celsius, o.tmin_tenths_celsius),
					tmax_tenths_celsius = coalesce(excluded.tmax_tenths_celsius, o.tmax_tenths_celsius),
					precipitation_tenths_mm = coalesce(excluded.precipitation_tenths_mm, o.precipitation_tenths_mm),
					snow_depth_mm = coalesce(excluded.snow_depth_mm, o.snow_depth_mm),
					wind_tenths_metres_per_second =
						coalesce(excluded.wind_tenths_metres_per_second, o.wind_tenths_metres_per_second)
				where coalesce(excluded.tmin_tenths_celsius, o.tmin_tenths_celsius) is distinct from o.tmin_tenths_celsius
					or coalesce(excluded.tmax_tenths_celsius, o.tmax_tenths_celsius)
						is distinct from o.tmax_tenths_celsius
					or coalesce(excluded.precipitation_tenths_mm, o.precipitation_tenths_mm)
						is distinct from o.precipitation_tenths_mm
					or coalesce(excluded.snow_depth_mm, o.snow_depth_mm) is distinct from o.snow_depth_mm
					or coalesce(excluded.wind_tenths_metres_per_second, o.wind_tenths_metres_per_second)
						is distinct from o.wind_tenths_metres_per_second
				returning o.day, o.xmax = 0 as inserted)
			select count(*) filter (where inserted) as inserted, count(*) filter (where not inserted) as changed,
				min(day) as first_day, max(day) as last_day from merged"""
		.formatted(COLUMNS);

	private static final String READ = "select s.record_version, o.day, " + COLUMNS
			+ " from climate.station s left join climate.observation o on o.station_id = s.id where s.id = ?";

	private final JdbcTemplate jdbc;

	ObservationTable(JdbcTemplate jdbc) {
		this.jdbc = jdbc;
	}

	/**
	 * Lays a record over the stored one. Must run in a transaction.
	 * @param station whose record
	 * @param record the new values; days and elements it lacks stay as they are
	 * @return what changed
	 */
	public Merge merge(StationId station, DailyRecord record) {
		if (firstDay(station).isEmpty()) {
			return fill(station, record);
		}
		this.jdbc.execute(INCOMING);
		this.jdbc.execute((ConnectionCallback<Long>) (connection) -> copy(connection,
				"copy incoming_observation from stdin with (format csv)", "", record));
		Merge merge = this.jdbc.queryForObject(MERGE,
				(row, number) -> new Merge(row.getLong("inserted"), row.getLong("changed"),
						row.getObject("first_day", LocalDate.class), row.getObject("last_day", LocalDate.class)),
				station.value());
		// Gone at the end of the transaction anyway; a second load in the same one needs
		// the name.
		this.jdbc.execute("drop table incoming_observation");
		return Objects.requireNonNull(merge);
	}

	/**
	 * With nothing to compare with, the rows go straight to their place.
	 */
	private Merge fill(StationId station, DailyRecord record) {
		Long rows = this.jdbc.execute((ConnectionCallback<Long>) (connection) -> copy(connection,
				"copy climate.observation (station_id, day, " + COLUMNS + ") from stdin with (format csv)",
				station.value() + ",", record));
		return new Merge(Objects.requireNonNull(rows), 0, record.firstDay().orElse(null),
				record.lastDay().orElse(null));
	}

	private static long copy(Connection connection, String command, String prefix, DailyRecord record)
			throws SQLException {
		PGConnection postgres = connection.unwrap(PGConnection.class);
		try (PGCopyOutputStream out = new PGCopyOutputStream(postgres, command, 1 << 16)) {
			LocalDate last = record.lastDay().orElse(LocalDate.MIN);
			StringBuilder line = new StringBuilder();
			for (LocalDate day = record.firstDay().orElse(LocalDate.MAX); !day.isAfter(last); day = day.plusDays(1)) {
				if (append(line, prefix, day, record)) {
					out.write(line.toString().getBytes(StandardCharsets.US_ASCII));
				}
			}
			return out.endCopy();
		}
		catch (IOException ex) {
			throw new DataAccessResourceFailureException("copying observations failed", ex);
		}
	}

	private static boolean append(StringBuilder line, String prefix, LocalDate day, DailyRecord record) {
		boolean any = false;
		line.setLength(0);
		line.append(prefix).append(day);
		for (Element element : ELEMENTS) {
			line.append(',');
			short value = record.value(element, day);
			if (value != DailyRecord.MISSING) {
				line.append(value);
				any = true;
			}
		}
		line.append('\n');
		return any;
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
			version[0] = row.getLong(1);
			LocalDate day = row.getObject(2, LocalDate.class);
			for (int at = 0; day != null && at < ELEMENTS.length; at++) {
				short value = row.getShort(at + 3);
				if (!row.wasNull()) {
					builder.set(ELEMENTS[at], day, value);
				}
			}
		}, station.value());
		return new StoredRecord(builder.build(), version[0]);
	}

	public Optional<LocalDate> firstDay(StationId station) {
		return day("min(day)", station);
	}

	public Optional<LocalDate> lastDay(StationId station) {
		return day("max(day)", station);
	}

	private Optional<LocalDate> day(String which, StationId station) {
		return Optional
			.ofNullable(this.jdbc.queryForObject("select " + which + " from climate.observation where station_id = ?",
					LocalDate.class, station.value()));
	}

	/**
	 * What laying a record over the stored one changed.
	 *
	 * @param inserted days that are new
	 * @param changed days with another value than before
	 * @param firstDay first of these days, if any
	 * @param lastDay last of these days, if any
	 */
	public record Merge(long inserted, long changed, @Nullable LocalDate firstDay, @Nullable LocalDate lastDay) {
	}

}
