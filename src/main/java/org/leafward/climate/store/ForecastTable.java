package org.leafward.climate.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.StationId;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.stereotype.Component;

/** Reads and writes {@code climate.forecast} and its days. */
@Component
public class ForecastTable {

	private static final String COLUMNS = "day, tmin_tenths_celsius, tmax_tenths_celsius, precipitation_tenths_mm, snowfall_mm, wind_tenths_metres_per_second, humidity_lowest_percent";

	private final JdbcTemplate jdbc;

	ForecastTable(JdbcTemplate jdbc) {
		this.jdbc = jdbc;
	}

	/**
	 * Puts a forecast in the place of the source's former one. Must run in a transaction.
	 * @param station whose forecast
	 * @param head source and times
	 * @param days its days, each once
	 */
	public void replace(StationId station, Head head, List<ForecastDay> days) {
		this.jdbc.update("""
				insert into climate.forecast (station_id, source, issued_at, fetched_at) values (?, ?, ?, ?)
				on conflict (station_id, source)
				do update set issued_at = excluded.issued_at, fetched_at = excluded.fetched_at""", station.value(),
				head.source(), FetchTable.time(head.issuedAt()), FetchTable.time(head.fetchedAt()));
		this.jdbc.update("delete from climate.forecast_day where station_id = ? and source = ?", station.value(),
				head.source());
		List<@Nullable Object[]> rows = new ArrayList<>();
		for (ForecastDay day : days) {
			rows.add(new @Nullable Object[] { station.value(), head.source(), day.day(), day.minimum(), day.maximum(),
					day.precipitation(), day.snowfall(), day.wind(), day.lowestHumidity() });
		}
		this.jdbc.batchUpdate("insert into climate.forecast_day (station_id, source, " + COLUMNS
				+ ") values (?, ?, ?, ?, ?, ?, ?, ?, ?)", rows);
	}

	/**
	 * The forecast that was issued last.
	 * @param station whose forecast
	 * @return empty when there is none
	 */
	public Optional<Head> newest(StationId station) {
		return this.jdbc.query("""
				select source, issued_at, fetched_at from climate.forecast where station_id = ?
				order by issued_at desc, source limit 1""", (row, number) -> head(row), station.value())
			.stream()
			.findFirst();
	}

	/**
	 * The forecasts of some stations that were issued last.
	 * @param stations the stations
	 * @return without those that have none
	 */
	public Map<StationId, Version> newest(List<StationId> stations) {
		Map<StationId, Version> versions = new HashMap<>();
		RowCallbackHandler taking = (row) -> {
			StationId station = new StationId(row.getString("station_id"));
			versions.put(station, new Version(station, head(row), row.getLong("written")));
		};
		this.jdbc.query("""
				select distinct on (station_id) station_id, source, issued_at, fetched_at, xmin::text::bigint as written
				from climate.forecast where station_id = any(?) order by station_id, issued_at desc, source""", taking,
				(Object) stations.stream().map(StationId::value).toArray(String[]::new));
		return versions;
	}

	/**
	 * Which of some stations have a forecast.
	 * @param stations the stations
	 * @return those that have one, of any age
	 */
	public Set<StationId> among(List<StationId> stations) {
		return Set.copyOf(this.jdbc.query("select distinct station_id from climate.forecast where station_id = any(?)",
				(row, number) -> new StationId(row.getString(1)),
				(Object) stations.stream().map(StationId::value).toArray(String[]::new)));
	}

	/**
	 * The days of a forecast.
	 * @param station whose forecast
	 * @param source which one
	 * @return in their order
	 */
	public List<ForecastDay> days(StationId station, String source) {
		return this.jdbc.query(
				"select " + COLUMNS + " from climate.forecast_day where station_id = ? and source = ? order by day",
				(row, number) -> new ForecastDay(row.getObject(1, LocalDate.class), number(row, 2), number(row, 3),
						number(row, 4), number(row, 5), number(row, 6), number(row, 7)),
				station.value(), source);
	}

	private static Head head(ResultSet row) throws SQLException {
		Instant issued = FetchTable.instant(row, "issued_at");
		Instant fetched = FetchTable.instant(row, "fetched_at");
		return new Head(row.getString("source"), (issued != null) ? issued : Instant.EPOCH,
				(fetched != null) ? fetched : Instant.EPOCH);
	}

	private static @Nullable Integer number(ResultSet row, int column) throws SQLException {
		int number = row.getInt(column);
		return row.wasNull() ? null : number;
	}

	/**
	 * A forecast as it was written once.
	 *
	 * @param station whose forecast
	 * @param head source and times
	 * @param written number of the transaction that wrote it
	 */
	public record Version(StationId station, Head head, long written) {
	}

	/**
	 * What a forecast is.
	 *
	 * @param source where it came from
	 * @param issuedAt when the source made it
	 * @param fetchedAt when it got here
	 */
	public record Head(String source, Instant issuedAt, Instant fetchedAt) {
	}

}
