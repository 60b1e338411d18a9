package org.leafward.climate.source.forecast;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.OutsideFixture;
import org.leafward.climate.OutsideFixture.Configured;
import org.leafward.climate.StationForecast;
import org.leafward.climate.fetch.FetchOutcome;
import org.leafward.climate.source.DownloadFixture;
import org.leafward.support.LocalServer;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The National Weather Service's two answers, written for these tests in the shape that
 * api.weather.gov documents: a point that names its grid cell, a cell with layers.
 */
class NwsSourceTests {

	private static final String GEO = "application/geo+json";

	private static final String GRID = """
			{"type":"Feature","properties":{"updateTime":"2026-11-25T10:12:34+00:00",
			"minTemperature":{"uom":"wmoUnit:degC","values":[
			 {"validTime":"2026-11-25T01:00:00+00:00/PT13H","value":-3.3333333333333335},
			 {"validTime":"2026-11-26T01:00:00+00:00/PT13H","value":1.1111111111111112},
			 {"validTime":"2026-11-27T01:00:00+00:00/PT13H","value":null}]},
			"maxTemperature":{"uom":"wmoUnit:degC","values":[
			 {"validTime":"2026-11-24T13:00:00+00:00/PT13H","value":9},
			 {"validTime":"2026-11-25T13:00:00+00:00/PT13H","value":6.666666666666667}]},
			"quantitativePrecipitation":{"uom":"wmoUnit:mm","values":[
			 {"validTime":"2026-11-25T06:00:00+00:00/PT6H","value":0},
			 {"validTime":"2026-11-25T12:00:00+00:00/P1DT6H","value":10}]},
			"windSpeed":{"uom":"wmoUnit:km_h-1","values":[
			 {"validTime":"2026-11-25T06:00:00+00:00/PT24H","value":18}]},
			"relativeHumidity":{"uom":"wmoUnit:percent","values":[
			 {"validTime":"2026-11-25T06:00:00+00:00/P1D","value":63}]},
			"snowfallAmount":{"uom":"wmoUnit:mm","values":[]}}}""";

	private static HikariDataSource source;

	private final SettableClock clock = new SettableClock(Instant.parse("2026-11-25T12:00:00Z"));

	private LocalServer server;

	private OutsideFixture node;

	@BeforeAll
	static void open() {
		source = TestDatabase.fresh();
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@BeforeEach
	void start() {
		OutsideFixture.empty(source);
		this.server = LocalServer.start();
		this.node = OutsideFixture.start(source, Configured.nws(this.server.address(""), "XX000000001"),
				DownloadFixture.patient(this.clock), this.clock);
		this.node.register("XX000000001");
		this.server.on("/points/41.9,-87.65", LocalServer.text(GEO, point(this.server.address("/gridpoints/LOT/1,2"))))
			.on("/gridpoints/LOT/1,2", LocalServer.text(GEO, GRID));
	}

	@AfterEach
	void stop() {
		this.server.close();
	}

	@Test
	void asksForThePointThenForItsCell() {
		assertThat(fetch().outcome()).isEqualTo("fetched");
		assertThat(this.server.asked()).containsExactly("/points/41.9,-87.65", "/gridpoints/LOT/1,2");
		StationForecast forecast = forecast();
		assertThat(forecast.source()).isEqualTo("nws");
		assertThat(forecast.issuedAt()).isEqualTo("2026-11-25T10:12:34Z");
		assertThat(forecast.fetchedAt()).isEqualTo(this.clock.instant());
		assertThat(forecast.stale()).isFalse();
		assertThat(forecast.lastFailure()).isNull();
		// 18 km/h are 5 m/s; of 10 mm in 30 h, 18 h lie on the first day.
		assertThat(forecast.days()).containsExactly(
				new ForecastDay(LocalDate.of(2026, 11, 25), -33, 67, 60, null, 50, 63),
				new ForecastDay(LocalDate.of(2026, 11, 26), 11, null, null, null, null, null));
	}

	@Test
	void fahrenheitIsConverted() {
		this.server.on("/gridpoints/LOT/1,2", LocalServer.text(GEO, """
				{"properties":{"updateTime":"2026-11-25T10:00:00+00:00","minTemperature":{"uom":"wmoUnit:degF",
				"values":[{"validTime":"2026-11-25T01:00:00+00:00/PT13H","value":28}]}}}"""));
		fetch();
		// 28 °F are -2.2 °C.
		assertThat(forecast().days().get(0).minimum()).isEqualTo(-22);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`',
			value = { "\"uom\":\"wmoUnit:degC\" | \"uom\":\"wmoUnit:K\" | minTemperature in 'wmoUnit:K'",
					"/PT13H | | time that can't be read", "/PT13H | /PT0S | time that can't be read",
					"/PT13H | /P400D | time that can't be read", "9} | \"warm\"} | no number",
					"\"updateTime\" | \"madeAt\" | when it was made", "}}} | | broken off or no JSON",
					"\"properties\" | \"else\" | no properties", "emperature | emp | no day with a temperature",
					"6.666666666666667 | 666 | maximum 6660" })
	void anAnswerThatCantBeUsedChangesNothing(String part, String other, String words) {
		fetch();
		StationForecast before = forecast();
		this.server.on("/gridpoints/LOT/1,2", LocalServer.text(GEO, GRID.replace(part, (other != null) ? other : "")));
		FetchOutcome outcome = fetch();
		assertThat(outcome.outcome()).isEqualTo("failed");
		assertThat(outcome.failure()).contains(words);
		assertThat(forecast().days()).isEqualTo(before.days());
		assertThat(forecast().fetchedAt()).isEqualTo(before.fetchedAt());
		assertThat(forecast().lastFailure()).isEqualTo(outcome.failure());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "https://elsewhere.example/gridpoints/LOT/1,2 | no grid cell of its own",
			"file:///etc/passwd | no grid cell of its own", "not an address | no grid cell of its own" })
	void theCellMustBeOfTheSameServer(String cell, String words) {
		this.server.on("/points/41.9,-87.65", LocalServer.text(GEO,
				"{\"properties\":{\"timeZone\":\"America/Chicago\",\"forecastGridData\":\"%s\"}}".formatted(cell)));
		assertThat(fetch().failure()).contains(words);
		assertThat(this.server.asked()).hasSize(1);
	}

	@Test
	void aPointOutsideTheCountryIsAFailureWithWords() {
		this.server.on("/points/41.9,-87.65", LocalServer.status(404));
		assertThat(fetch().failure()).contains("knows nothing about this place");
		assertThat(this.node.forecasts().of(OutsideFixture.STATION)).isEmpty();
	}

	@Test
	void aForecastGetsStaleAndANewOneTakesItsPlaceWhole() {
		fetch();
		this.clock.set(Instant.parse("2026-11-25T22:12:34Z"));
		assertThat(forecast().stale()).isFalse();
		this.clock.advance(Duration.ofSeconds(1));
		assertThat(forecast().stale()).isTrue();
		this.clock.set(Instant.parse("2026-11-26T09:00:00Z"));
		this.server.on("/gridpoints/LOT/1,2",
				LocalServer.text(GEO, GRID.replace("2026-11-25T10:12:34", "2026-11-26T08:00:00")));
		fetch();
		assertThat(forecast().stale()).isFalse();
		assertThat(forecast().days()).extracting(ForecastDay::day).containsExactly(LocalDate.of(2026, 11, 26));
	}

	private FetchOutcome fetch() {
		return this.node.fetcher().now("XX000000001").get(0);
	}

	private StationForecast forecast() {
		return this.node.forecasts().of(OutsideFixture.STATION).orElseThrow();
	}

	private static String point(Object cell) {
		return """
				{"type":"Feature","properties":{"gridId":"LOT","gridX":1,"gridY":2,"forecastGridData":"%s",
				"timeZone":"America/Chicago"}}""".formatted(cell);
	}

}
