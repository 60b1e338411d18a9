package org.leafward.climate.fetch;

import com.zaxxer.hikari.HikariDataSource;
import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.climate.OutsideFixture;
import org.leafward.climate.OutsideFixture.Configured;
import org.leafward.climate.StationForecast;
import org.leafward.climate.source.DownloadFixture;
import org.leafward.climate.store.FetchState;
import org.leafward.measure.BadInput;
import org.leafward.support.LocalServer;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** When sources are asked, by whom, and what a failure does. */
class FetcherTests {

	private static final Duration BOX = Duration.ofMinutes(2);

	private static final String GOOD = "date,min_c\n2026-11-26,-1.5\n";

	private static HikariDataSource source;

	private final SettableClock clock = new SettableClock(Instant.parse("2026-11-25T12:00:00Z"));

	private LocalServer server;

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
		this.server = LocalServer.start().on("/1", csv(GOOD)).on("/2", csv(GOOD));
	}

	@AfterEach
	void stop() {
		this.server.close();
	}

	@Test
	void nothingIsAskedUnlessItIsConfigured() {
		OutsideFixture node = OutsideFixture.start(source,
				new Configured(List.of(), List.of(), Map.of(), this.server.address("")),
				DownloadFixture.patient(this.clock), this.clock);
		node.register("XX000000001");
		assertThat(node.fetcher().forecasts(BOX)).isEmpty();
		assertThat(node.fetcher().observations(BOX)).isEmpty();
		assertThat(node.fetcher().status()).isEmpty();
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> node.fetcher().now("XX000000001"))
			.withMessageContaining("no source is configured");
		assertThat(this.server.asked()).isEmpty();
	}

	@Test
	void anAnswerIsGoodForAnHourAlsoOverARestart() {
		OutsideFixture node = node("XX000000001");
		assertThat(node.fetcher().status()).singleElement()
			.isEqualTo(new SourceStatus("csv", "XX000000001", "forecast", null, null, 0, null, null));
		assertThat(node.fetcher().forecasts(BOX)).extracting(FetchOutcome::outcome).containsExactly("fetched");
		this.clock.advance(Duration.ofMinutes(55));
		assertThat(node("XX000000001").fetcher().forecasts(BOX)).isEmpty();
		this.clock.advance(Duration.ofMinutes(5));
		assertThat(node("XX000000001").fetcher().forecasts(BOX)).hasSize(1);
		assertThat(this.server.asked()).hasSize(2);
	}

	@Test
	void twoNodesAskOnce() throws Exception {
		CountDownLatch asked = new CountDownLatch(1);
		CountDownLatch answer = new CountDownLatch(1);
		this.server.on("/1", (exchange) -> {
			asked.countDown();
			await(answer);
			csv(GOOD).send(exchange);
		});
		OutsideFixture one = node("XX000000001");
		OutsideFixture other = node("XX000000001");
		ExecutorService thread = Executors.newSingleThreadExecutor();
		try {
			Future<List<FetchOutcome>> first = thread.submit(() -> one.fetcher().forecasts(BOX));
			await(asked);
			assertThat(other.fetcher().forecasts(BOX)).isEmpty();
			assertThat(other.fetcher().now("XX000000001")).extracting(FetchOutcome::outcome).containsExactly("busy");
			answer.countDown();
			assertThat(first.get(20, TimeUnit.SECONDS)).hasSize(1);
		}
		finally {
			thread.shutdownNow();
		}
		assertThat(other.fetcher().forecasts(BOX)).isEmpty();
		assertThat(this.server.asked()).hasSize(1);
	}

	@Test
	void aNodeThatDiesHoldsNothingUpForLong() {
		OutsideFixture node = node("XX000000001");
		Instant now = this.clock.instant();
		UUID dead = UUID.randomUUID();
		assertThat(
				node.tables().fetches().claim("csv", "XX000000001", now, now.plus(Duration.ofMinutes(15)), dead, false))
			.isPresent();
		this.clock.advance(Duration.ofMinutes(14));
		assertThat(node.fetcher().forecasts(BOX)).isEmpty();
		this.clock.advance(Duration.ofMinutes(1));
		assertThat(node.fetcher().forecasts(BOX)).hasSize(1);
		FetchState after = state(node);
		node.tables().fetches().failed(dead, now, "too late");
		node.tables().fetches().succeeded(dead, now, now);
		assertThat(state(node)).isEqualTo(after);
	}

	@Test
	void aFailureWaitsLongerEachTimeAndKeepsTheLastGood() {
		OutsideFixture node = node("XX000000001");
		node.fetcher().forecasts(BOX);
		StationForecast good = node.forecasts().of(OutsideFixture.STATION).orElseThrow();
		this.server.on("/1", LocalServer.status(500));
		this.clock.advance(Duration.ofHours(1));
		for (Duration wait : List.of(Duration.ofMinutes(5), Duration.ofMinutes(15), Duration.ofHours(1),
				Duration.ofHours(3), Duration.ofHours(6), Duration.ofHours(12), Duration.ofHours(24),
				Duration.ofHours(24))) {
			assertThat(node.fetcher().forecasts(BOX)).extracting(FetchOutcome::outcome).containsExactly("failed");
			assertThat(state(node).nextTryAt()).isEqualTo(this.clock.instant().plus(wait));
			this.clock.advance(wait.minusSeconds(1));
			assertThat(node.fetcher().forecasts(BOX)).isEmpty();
			this.clock.advance(Duration.ofSeconds(1));
		}
		StationForecast kept = node.forecasts().of(OutsideFixture.STATION).orElseThrow();
		assertThat(kept.days()).isEqualTo(good.days());
		assertThat(kept.stale()).isTrue();
		assertThat(kept.lastFailure()).contains("status 500");
		SourceStatus status = node.fetcher().status().get(0);
		assertThat(status.failures()).isEqualTo(8);
		assertThat(status.lastSuccess()).isEqualTo("2026-11-25T12:00:00Z");
		this.server.on("/1", csv(GOOD));
		node.fetcher().forecasts(BOX);
		assertThat(node.fetcher().status().get(0).failures()).isZero();
		assertThat(node.forecasts().of(OutsideFixture.STATION).orElseThrow().lastFailure()).isNull();
	}

	@Test
	void waitsAsLongAsTheServiceAsks() {
		this.server.on("/1", LocalServer.status(503, "Retry-After", "7200"));
		OutsideFixture node = node("XX000000001");
		node.fetcher().forecasts(BOX);
		assertThat(state(node).nextTryAt()).isEqualTo("2026-11-25T14:00:00Z");
	}

	@Test
	void oneThatFailsStopsNoOther() {
		this.server.on("/1", this.server.silence());
		OutsideFixture node = OutsideFixture.start(source,
				new Configured(List.of(), List.of(),
						Map.of("XX000000001", this.server.address("/1"), "XX000000002", LocalServer.nobody(),
								"XX00000003", this.server.address("/2"), "XX000000004", this.server.address("/2"),
								"xx000000005", this.server.address("/2")),
						this.server.address("")),
				DownloadFixture.impatient(this.clock), this.clock);
		for (int number : new int[] { 1, 2, 5 }) {
			node.register("XX00000000" + number);
		}
		List<FetchOutcome> outcomes = node.fetcher().forecasts(BOX);
		assertThat(outcomes).extracting(FetchOutcome::station)
			.containsExactly("XX000000001", "XX000000002", "XX000000004", "XX000000005", "XX00000003");
		assertThat(outcomes).extracting(FetchOutcome::outcome)
			.containsExactly("failed", "failed", "failed", "fetched", "failed");
		assertThat(outcomes.get(0).failure()).contains("in time");
		assertThat(outcomes.get(1).failure()).contains("can't be connected to");
		assertThat(outcomes.get(2).failure()).contains("station XX000000004 isn't registered");
		assertThat(outcomes.get(4).failure()).contains("11 capital letters");
	}

	@Test
	void noStationIsBegunAfterTheTimeBox() {
		this.server.on("/1", (exchange) -> {
			this.clock.advance(BOX);
			csv(GOOD).send(exchange);
		});
		OutsideFixture node = node("XX000000001", "XX000000002");
		assertThat(node.fetcher().forecasts(BOX)).extracting(FetchOutcome::station).containsExactly("XX000000001");
		assertThat(node.fetcher().forecasts(BOX)).extracting(FetchOutcome::station).containsExactly("XX000000002");
	}

	private OutsideFixture node(String... stations) {
		Map<String, URI> addresses = new HashMap<>();
		for (String station : stations) {
			addresses.put(station, this.server.address("/" + station.charAt(station.length() - 1)));
		}
		OutsideFixture node = OutsideFixture.start(source,
				new Configured(List.of(), List.of(), addresses, this.server.address("")),
				DownloadFixture.patient(this.clock), this.clock);
		List.of(stations).forEach(node::register);
		return node;
	}

	private static FetchState state(OutsideFixture node) {
		return node.tables().fetches().find("csv", "XX000000001").orElseThrow();
	}

	private static LocalServer.Answer csv(String text) {
		return LocalServer.text("text/csv", text);
	}

	private static void await(CountDownLatch latch) {
		try {
			assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

}
