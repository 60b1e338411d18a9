package org.leafward.climate.source.ncei;

import com.sun.net.httpserver.HttpExchange;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.climate.LoadReport;
import org.leafward.climate.ObservationsLoaded;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.OutsideFixture;
import org.leafward.climate.OutsideFixture.Configured;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.fetch.FetchOutcome;
import org.leafward.climate.source.DownloadFixture;
import org.leafward.support.LocalServer;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.util.MultiValueMap;
import org.springframework.web.util.UriComponentsBuilder;

import static org.assertj.core.api.Assertions.assertThat;

/** The record of a station, asked for in parts, against a server of ours. */
class NceiSourceTests {

	private static final String ID = "XX000000001";

	private static HikariDataSource source;

	private final SettableClock clock = new SettableClock(Instant.parse("2026-11-25T12:00:00Z"));

	private final List<ObservedDay> measured = new ArrayList<>();

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
		this.node = restart();
		this.node.register(ID);
		this.server.on("/data", this::answer);
	}

	@AfterEach
	void stop() {
		this.server.close();
	}

	@Test
	void asksForTheWholeRecordTenYearsAtATime() {
		measured("1949-03-01", 10);
		measured("2026-11-22", 60);
		FetchOutcome outcome = fetch();
		assertThat(outcome.outcome()).isEqualTo("fetched");
		assertThat(this.server.asked()).hasSize(18)
			.first()
			.asString()
			.isEqualTo("/data?dataset=daily-summaries&stations=XX000000001&startDate=1850-01-01&endDate=1859-12-31"
					+ "&dataTypes=TMIN,TMAX,PRCP,SNWD,AWND&format=csv&includeAttributes=true");
		assertThat(this.server.asked().get(17)).contains("startDate=2020-01-01&endDate=2026-11-25");
		LoadReport report = outcome.report();
		assertThat(report.daysInserted()).isEqualTo(2);
		assertThat(report.valuesKept()).isEqualTo(2);
		assertThat(report.firstDay()).isEqualTo("1949-03-01");
		assertThat(report.lastDay()).isEqualTo("2026-11-22");
		assertThat(minimum("1949-03-01")).isEqualTo((short) 10);
		assertThat(this.node.inside().events()).hasSize(2).allMatch(ObservationsLoaded.class::isInstance);
	}

	@Test
	void thenAsksForSixtyDaysAgainAndTakesCorrections() {
		measured("2026-11-20", 10);
		fetch();
		this.server.asked().clear();
		this.measured.clear();
		measured("2026-11-20", 12);
		measured("2026-11-23", 14);
		this.clock.advance(Duration.ofDays(1));
		LoadReport report = fetch().report();
		assertThat(this.server.asked()).singleElement().asString().contains("startDate=2026-09-21&endDate=2026-11-26");
		assertThat(report.daysInserted()).isEqualTo(1);
		assertThat(report.daysChanged()).isEqualTo(1);
		assertThat(minimum("2026-11-20")).isEqualTo((short) 12);
		assertThat(fetch().report().daysChanged()).isZero();
	}

	@Test
	void aDayHandedInDoesNotHideThePastButALoadedRecordDoes() {
		this.node.inside().observations().load(OutsideFixture.STATION, List.of(day("2026-11-24", 5)));
		fetch();
		assertThat(this.server.asked()).hasSize(18);
		OutsideFixture.empty(source);
		this.node.register(ID);
		this.server.asked().clear();
		this.node.inside()
			.observations()
			.load(OutsideFixture.STATION, List.of(day("1990-01-01", 5), day("2026-06-30", 5)));
		fetch();
		assertThat(this.server.asked()).singleElement().asString().contains("startDate=2026-05-01");
	}

	@Test
	void aBreakCostsOnlyWhatIsMissing() {
		measured("1955-01-01", 1);
		measured("1985-06-01", 2);
		measured("2026-11-20", 3);
		this.server.on("/data", (exchange) -> {
			if (exchange.getRequestURI().getQuery().contains("startDate=1980")) {
				LocalServer.status(500).send(exchange);
			}
			else {
				answer(exchange);
			}
		});
		FetchOutcome outcome = fetch();
		assertThat(outcome.outcome()).isEqualTo("failed");
		assertThat(outcome.failure()).contains("status 500");
		assertThat(minimum("1955-01-01")).isEqualTo((short) 1);
		this.server.asked().clear();
		this.server.on("/data", this::answer);
		this.node = restart();
		assertThat(fetch().outcome()).isEqualTo("fetched");
		assertThat(this.server.asked().get(0)).contains("startDate=1979-11-01");
		assertThat(minimum("1985-06-01")).isEqualTo((short) 2);
		assertThat(minimum("2026-11-20")).isEqualTo((short) 3);
	}

	@Test
	void whatTakesTooLongGoesOnNextTime() {
		measured("1855-01-01", 1);
		this.server.on("/data", (exchange) -> {
			this.clock.advance(Duration.ofSeconds(50));
			answer(exchange);
		});
		FetchOutcome first = this.node.fetcher().observations(Duration.ofMinutes(2)).get(0);
		assertThat(first.outcome()).isEqualTo("partly");
		assertThat(this.server.asked()).hasSize(3);
		assertThat(this.node.fetcher().observations(Duration.ofMinutes(2))).hasSize(1);
		assertThat(this.server.asked().get(3)).contains("startDate=1879-11-01");
	}

	@Test
	void wrongAnswersKeepWhatIsThere() {
		measured("2026-11-20", 10);
		fetch();
		this.server.on("/data", LocalServer.text("text/html", "<p>moved</p>"));
		assertThat(fetch().failure()).contains("content type");
		this.server.on("/data", LocalServer.text("text/csv", "DATE,STATION,TMIN\n2026-11-20,XX000000001,1.0\n"));
		assertThat(fetch().failure()).contains("other units");
		this.server.on("/data", LocalServer.brokenOff("text/csv", "DATE,STATION,TMIN\n2026-11-20,XX000000001,99\n"));
		assertThat(fetch().outcome()).isEqualTo("failed");
		this.server.on("/data", LocalServer.text("text/csv", ""));
		assertThat(fetch().outcome()).isEqualTo("fetched");
		assertThat(minimum("2026-11-20")).isEqualTo((short) 10);
	}

	private OutsideFixture restart() {
		return OutsideFixture.start(source, Configured.ncei(this.server.address(""), ID),
				DownloadFixture.patient(this.clock), this.clock);
	}

	private FetchOutcome fetch() {
		return this.node.fetcher().now(ID).get(0);
	}

	private short minimum(String day) {
		DailyRecord record = this.node.inside().tables().observations().read(OutsideFixture.STATION).record();
		return record.value(Element.TMIN, LocalDate.parse(day));
	}

	private void measured(String day, int minimum) {
		this.measured.add(day(day, minimum));
	}

	private static ObservedDay day(String day, int minimum) {
		return new ObservedDay(LocalDate.parse(day), minimum, null, null, null, null);
	}

	/** Answers with the measured days between the dates asked for. */
	private void answer(HttpExchange exchange) throws IOException {
		MultiValueMap<String, String> asked = UriComponentsBuilder.fromUri(exchange.getRequestURI())
			.build()
			.getQueryParams();
		LocalDate from = LocalDate.parse(asked.getFirst("startDate"));
		LocalDate to = LocalDate.parse(asked.getFirst("endDate"));
		StringBuilder csv = new StringBuilder("\"DATE\",\"STATION\",\"TMIN\",\"TMIN_ATTRIBUTES\"\n");
		for (ObservedDay day : this.measured) {
			if (!day.day().isBefore(from) && !day.day().isAfter(to)) {
				csv.append("\"%s\",\"%s\",\"%5d\",\",,W,2400\"\n".formatted(day.day(), ID, day.minimum()));
			}
		}
		LocalServer.text("text/csv", csv.toString()).send(exchange);
	}

}
