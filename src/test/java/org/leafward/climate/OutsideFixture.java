package org.leafward.climate;

import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.leafward.climate.fetch.Fetcher;
import org.leafward.climate.source.Download;
import org.leafward.climate.source.WeatherSource;
import org.leafward.climate.source.forecast.CsvSource;
import org.leafward.climate.source.forecast.ForecastSettings;
import org.leafward.climate.source.forecast.NwsSource;
import org.leafward.climate.source.ncei.NceiSettings;
import org.leafward.climate.source.ncei.NceiSource;
import org.leafward.climate.store.OutsideTables;
import org.leafward.measure.GeoPoint;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * One server of several against one database, with its sources on a server of ours; a new
 * one is a restart.
 *
 * @param inside stations and observations
 * @param tables the tables
 * @param forecasts keeps forecasts
 * @param fetcher asks the sources
 */
public record OutsideFixture(ClimateFixture inside, OutsideTables tables, Forecasts forecasts, Fetcher fetcher) {

	public static final StationId STATION = new StationId("XX000000001");

	/** What is configured. */
	public record Configured(List<String> ncei, List<String> nws, Map<String, URI> csv, URI outside) {

		public static Configured ncei(URI outside, String... stations) {
			return new Configured(List.of(stations), List.of(), Map.of(), outside);
		}

		public static Configured nws(URI outside, String... stations) {
			return new Configured(List.of(), List.of(stations), Map.of(), outside);
		}

	}

	public static void empty(DataSource source) {
		JdbcClient.create(source).sql("truncate climate.station cascade").update();
		JdbcClient.create(source).sql("truncate climate.fetch_state").update();
	}

	public static OutsideFixture start(DataSource source, Configured configured, Download download, Clock clock) {
		ClimateFixture inside = ClimateFixture.on(source);
		OutsideTables tables = OutsideTables.on(source);
		Forecasts forecasts = new Forecasts(inside.tables().stations(), tables.forecasts(), tables.fetches(),
				new TransactionTemplate(new JdbcTransactionManager(source)), clock, Duration.ofHours(12), (event) -> {
				});
		ForecastSettings settings = new ForecastSettings(
				new ForecastSettings.Nws(configured.nws(), configured.outside()), configured.csv());
		List<WeatherSource> sources = List.of(
				new NceiSource(new NceiSettings(configured.ncei(), configured.outside().resolve("/data")), download,
						inside.stations(), inside.observations(), clock),
				new NwsSource(settings, download, inside.stations(), forecasts, clock),
				new CsvSource(settings, download, forecasts));
		return new OutsideFixture(inside, tables, forecasts, new Fetcher(sources, tables.fetches(), () -> 0.5, clock));
	}

	public void register(String id) {
		this.inside.stations()
			.register(new Station(new StationId(id), "Hill", new GeoPoint(41.90, -87.65004, 180), false));
	}

}
