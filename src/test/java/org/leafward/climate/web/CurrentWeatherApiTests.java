package org.leafward.climate.web;

import com.zaxxer.hikari.HikariDataSource;
import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.OutsideFixture;
import org.leafward.climate.OutsideFixture.Configured;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.source.DownloadFixture;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.support.LocalServer;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

import static org.assertj.core.api.Assertions.assertThat;

/** The API of the season so far on a real database, without security. */
class CurrentWeatherApiTests {

	private static final String STATION = "/api/v1/stations/XX000000001";

	private static final String FORECAST = """
			# issued: 2026-11-25T06:00:00Z
			date,min_c,max_c,precip_mm,wind_ms,min_rh_percent
			2026-11-26,-1.5,4,0.4,3.1,55
			""";

	private static HikariDataSource source;

	private final SettableClock clock = new SettableClock(Instant.parse("2026-11-25T12:00:00Z"));

	private LocalServer server;

	private OutsideFixture node;

	private MockMvcTester mvc;

	@BeforeAll
	static void open() {
		source = TestDatabase.fresh();
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@BeforeEach
	void wire() {
		OutsideFixture.empty(source);
		this.server = LocalServer.start().on("/f.csv", LocalServer.text("text/csv", FORECAST));
		URI outside = this.server.address("");
		this.node = OutsideFixture.start(
				source, new Configured(List.of("XX000000001"), List.of(),
						Map.of("XX000000001", outside.resolve("/f.csv")), outside),
				DownloadFixture.patient(this.clock), this.clock);
		this.node.register("XX000000001");
		this.mvc = MockMvcTester.of(new CurrentWeatherApi(this.node.inside().observations(), this.node.forecasts(),
				this.node.fetcher(), this.clock));
	}

	@AfterEach
	void stop() {
		this.server.close();
	}

	@Test
	void daysAreAddedOnce() {
		String days = """
				[{"date":"2026-11-24","minimumC":-2.25,"maximumC":7,"precipitationMm":0.4,"snowDepthMm":12.4,"windMs":3.14},
				 {"date":"2026-11-25","minimumC":1}]""";
		assertThat(append(days)).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.daysInserted", (number) -> assertThat(number).isEqualTo(2))
			.hasPathSatisfying("$.valuesKept", (number) -> assertThat(number).isEqualTo(6));
		assertThat(append(days)).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.daysInserted", (number) -> assertThat(number).isEqualTo(0))
			.hasPathSatisfying("$.daysChanged", (number) -> assertThat(number).isEqualTo(0));
		DailyRecord record = this.node.inside().tables().observations().read(OutsideFixture.STATION).record();
		LocalDate day = LocalDate.of(2026, 11, 24);
		assertThat(record.value(Element.TMIN, day)).isEqualTo((short) -22);
		assertThat(record.value(Element.TMAX, day)).isEqualTo((short) 70);
		assertThat(record.value(Element.PRCP, day)).isEqualTo((short) 4);
		assertThat(record.value(Element.SNWD, day)).isEqualTo((short) 12);
		assertThat(record.value(Element.AWND, day)).isEqualTo((short) 31);
		assertThat(this.node.inside().events()).hasSize(1);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', value = { "[] | body | 0 days", "[null] | [0] | null",
			"[{\"date\":\"2026-11-24\"}] | [0] | no value", "[{\"minimumC\":1}] | [0].date | no date",
			"[{\"date\":\"24.11.2026\",\"minimumC\":1}] | [0].date | no date",
			"[{\"date\":\"2026-11-27\",\"minimumC\":1}] | [0].date | still to come",
			"[{\"date\":\"1066-10-14\",\"minimumC\":1}] | [0].date | before 1700",
			"[{\"date\":\"2026-11-24\",\"minimumC\":-96}] | [0].minimumC | outside -95.0 to 60.0",
			"[{\"date\":\"2026-11-24\",\"maximumC\":1e300}] | [0].maximumC | outside",
			"[{\"date\":\"2026-11-24\",\"minimumC\":5,\"maximumC\":4}] | [0].minimumC | above the maximum",
			"[{\"date\":\"2026-11-24\",\"precipitationMm\":-0.1}] | [0].precipitationMm | outside 0.0 to 2000.0",
			"[{\"date\":\"2026-11-24\",\"snowDepthMm\":15001}] | [0].snowDepthMm | outside",
			"[{\"date\":\"2026-11-23\",\"windMs\":1},{\"date\":\"2026-11-24\",\"windMs\":101}] | [1].windMs | outside",
			"[{\"date\":\"2026-11-24\",\"windMs\":1},{\"date\":\"2026-11-24\",\"windMs\":1}] | [1].date | twice" })
	void badDaysAreRefusedByField(String days, String where, String what) {
		refused(append(days), where, what);
		assertThat(this.node.inside().observations().lastDay(OutsideFixture.STATION)).isEmpty();
	}

	@Test
	void tooManyDaysAreRefused() {
		refused(append("[" + "{\"date\":\"2026-11-24\",\"windMs\":1},".repeat(400)
				+ "{\"date\":\"2026-11-24\",\"windMs\":1}]"), "body", "401 days");
	}

	@Test
	void daysOfAStationThatIsntThereAreRefused() {
		assertThat(this.mvc.post()
			.uri("/api/v1/stations/XX000000009/observations")
			.contentType(MediaType.APPLICATION_JSON)
			.content("[{\"date\":\"2026-11-24\",\"windMs\":1}]")
			.exchange()).failure().hasRootCauseInstanceOf(NotThere.class);
	}

	@Test
	void aForecastIsHandedInAndGiven() {
		assertThat(this.mvc.get().uri(STATION + "/forecast").exchange()).failure()
			.hasRootCauseInstanceOf(NotThere.class);
		assertThat(upload(FORECAST)).hasStatusOk();
		this.clock.set(Instant.parse("2026-11-25T18:00:01Z"));
		assertThat(this.mvc.get().uri(STATION + "/forecast")).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.source", (name) -> assertThat(name).isEqualTo("upload"))
			.hasPathSatisfying("$.issuedAt", (time) -> assertThat(time).isEqualTo("2026-11-25T06:00:00Z"))
			.hasPathSatisfying("$.stale", (stale) -> assertThat(stale).isEqualTo(true))
			.hasPathSatisfying("$.days[0].date", (day) -> assertThat(day).isEqualTo("2026-11-26"))
			.hasPathSatisfying("$.days[0].minimumC", (degrees) -> assertThat(degrees).isEqualTo(-1.5))
			.hasPathSatisfying("$.days[0].lowestHumidityPercent", (percent) -> assertThat(percent).isEqualTo(55));
	}

	@Test
	void badForecastsAreRefusedAndTheLastGoodStays() {
		upload(FORECAST);
		refused(upload("date,min_c\n2026-11-26,cold\n"), "line 2", "no number");
		refused(upload("date,min_c\n2026-11-26,1\n2026-11-26,1\n"), "days", "twice");
		refused(upload("date,min_c\n"), "days", "0 days");
		refused(upload("date,max_c\n2026-11-26,99\n"), "maximum", "outside -950 to 600");
		refused(upload("#".repeat(70_000)), "body", "larger than 65536");
		assertThat(this.node.forecasts().of(OutsideFixture.STATION).orElseThrow().days()).hasSize(1);
	}

	@Test
	void fetchingSaysWhatCameOfEachSource() {
		this.server.on("/data", LocalServer.status(500));
		assertThat(this.mvc.post().uri(STATION + "/fetch")).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$[0].source", (name) -> assertThat(name).isEqualTo("ncei"))
			.hasPathSatisfying("$[0].outcome", (outcome) -> assertThat(outcome).isEqualTo("failed"))
			.hasPathSatisfying("$[1].outcome", (outcome) -> assertThat(outcome).isEqualTo("fetched"));
		this.server.on("/f.csv", LocalServer.status(404));
		assertThat(this.mvc.post().uri(STATION + "/fetch")).hasStatus(502);
		assertThat(this.mvc.get().uri("/api/v1/sources")).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.length()", (number) -> assertThat(number).isEqualTo(2))
			.hasPathSatisfying("$[0].failures", (number) -> assertThat(number).isEqualTo(2))
			.hasPathSatisfying("$[0].nextTry", (time) -> assertThat(time).isEqualTo("2026-11-25T12:15:00Z"))
			.hasPathSatisfying("$[1].lastSuccess", (time) -> assertThat(time).isEqualTo("2026-11-25T12:00:00Z"))
			.hasPathSatisfying("$[1].lastFailure", (words) -> assertThat(words).asString().contains("status 404"));
		refused(this.mvc.post().uri("/api/v1/stations/XX000000002/fetch").exchange(), "id", "no source");
	}

	@Test
	void thePageSaysInWordsHowFreshItAllIs() {
		Latest latest = new Latest(this.node.inside().observations(), this.node.forecasts(), this.node.fetcher(),
				this.clock);
		assertThat(latest.of(OutsideFixture.STATION)).containsExactly("No day has an observation yet.",
				"There is no forecast for this station.");
		this.node.inside()
			.observations()
			.load(OutsideFixture.STATION,
					List.of(new ObservedDay(LocalDate.of(2026, 11, 24), 1, null, null, null, null)));
		this.server.on("/data", LocalServer.status(500));
		this.node.fetcher().now("XX000000001");
		assertThat(latest.of(OutsideFixture.STATION)).containsExactly(
				"The last day with an observation is Tue 24 Nov 2026.",
				"The forecast was made on Wed 25 Nov 2026, 06:00 UTC, 6 hours ago.",
				"The last try to fetch the observations failed: 127.0.0.1 answered with status 500. "
						+ "What was there before is kept.");
		this.clock.advance(Duration.ofDays(3));
		assertThat(latest.of(OutsideFixture.STATION)).contains(
				"The forecast was made on Wed 25 Nov 2026, 06:00 UTC, 3 days ago; it is stale, too old to lean on.");
	}

	private MvcTestResult append(String days) {
		return this.mvc.post()
			.uri(STATION + "/observations")
			.contentType(MediaType.APPLICATION_JSON)
			.content(days)
			.exchange();
	}

	private MvcTestResult upload(String csv) {
		return this.mvc.put().uri(STATION + "/forecast").contentType(MediaType.TEXT_PLAIN).content(csv).exchange();
	}

	private static void refused(MvcTestResult result, String where, String what) {
		assertThat(result).failure().satisfies((failure) -> {
			Throwable cause = (failure.getCause() != null) ? failure.getCause() : failure;
			assertThat(cause).isInstanceOfSatisfying(BadInput.class, (bad) -> {
				assertThat(bad.where()).isEqualTo(where);
				assertThat(bad.what()).contains(what);
			});
		});
	}

}
