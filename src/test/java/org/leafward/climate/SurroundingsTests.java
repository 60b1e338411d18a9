package org.leafward.climate;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import com.zaxxer.hikari.HikariDataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.Element;
import org.leafward.climate.store.OutsideTables;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.GeoPoint;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What is read for many places at once is what each would find alone, and another text as
 * soon as any of it is another.
 */
class SurroundingsTests {

	private static final GeoPoint HERE = new GeoPoint(45, 10, 100);

	private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-07-01T10:00:00Z"), ZoneOffset.UTC);

	private HikariDataSource source;

	private ClimateFixture wired;

	@BeforeEach
	void wire() {
		this.source = TestDatabase.fresh();
		this.wired = ClimateFixture.on(this.source);
	}

	@AfterEach
	void close() {
		this.source.close();
	}

	@Test
	void manyPlacesAtOnceFindTheStationsThatLieWithinTheRadius() {
		Random random = new Random(11);
		List<Station> all = new ArrayList<>();
		for (int number = 0; number < 600; number++) {
			// Crowded where boxes of degrees are easily wrong: the date line and the
			// poles.
			double latitude = (number % 3 == 0) ? 86 + 4 * random.nextDouble() : 62 + 4 * random.nextDouble();
			double longitude = (number % 2 == 0) ? 176 + 4 * random.nextDouble() : -180 + 4 * random.nextDouble();
			all.add(station(number, new GeoPoint(latitude, longitude, 0)));
		}
		all.forEach(this.wired.stations()::register);
		List<GeoPoint> places = new ArrayList<>(all.subList(0, 40).stream().map(Station::point).toList());
		places.add(new GeoPoint(90, 0, 0));
		places.add(new GeoPoint(64, 180, 0));
		places.add(new GeoPoint(64, -180, 0));
		places.add(HERE);
		var found = this.wired.stations().around(places);
		for (GeoPoint place : places) {
			List<StationId> near = all.stream()
				.filter((station) -> place.distanceKilometres(station.point()) <= 150)
				.sorted(Comparator.comparingDouble((Station station) -> place.distanceKilometres(station.point()))
					.thenComparing((station) -> station.id().value()))
				.map(Station::id)
				.toList();
			assertThat(found.get(place)).extracting((stored) -> stored.station().id()).as("%s", place).isEqualTo(near);
			assertThat(this.wired.stations().near(place, 150)).extracting(Station::id).isEqualTo(near);
		}
		assertThat(found.get(HERE)).isEmpty();
		assertThat(found.get(new GeoPoint(64, 180, 0))).isNotEmpty();
	}

	@Test
	void theTextIsAnotherAfterEachChangeAndTheSameOnEachNode() {
		StationId station = new StationId("XX000000001");
		Forecasts forecasts = forecasts(this.wired);
		List<String> texts = new ArrayList<>();
		texts.add(text(forecasts));
		this.wired.stations().register(station(1, HERE));
		texts.add(text(forecasts));
		this.wired.observations().load(station, List.of(day(-10)));
		texts.add(text(forecasts));
		this.wired.observations().load(station, List.of(day(-11)));
		texts.add(text(forecasts));
		forecasts.keep(station, "one", null, List.of(ahead(20)));
		texts.add(text(forecasts));
		forecasts.keep(station, "one", null, List.of(ahead(30)));
		texts.add(text(forecasts));
		forecasts.keep(station, "another", CLOCK.instant().minusSeconds(60), List.of(ahead(40)));
		assertThat(text(forecasts)).as("an older forecast of another source").isEqualTo(texts.get(5));
		this.wired.stations().register(station(1, new GeoPoint(45, 10, 200)));
		texts.add(text(forecasts));
		assertThat(texts).doesNotHaveDuplicates();
		assertThat(text(forecasts(ClimateFixture.on(this.source)))).isEqualTo(texts.get(6));
		Forecasts later = forecasts(this.wired, Clock.offset(CLOCK, Duration.ofHours(13)));
		assertThat(text(later)).as("stale").doesNotContain("ForecastDay").isNotEqualTo(texts.get(6));
	}

	@Test
	void aRecordThatMovesOnMeanwhileIsReadAnew() {
		StationId station = new StationId("XX000000001");
		this.wired.stations().register(station(1, HERE));
		this.wired.observations().load(station, List.of(day(-10)));
		Surroundings ahead = new SurroundingsReader(this.wired.stations(), forecasts(this.wired)).of(List.of(HERE));
		this.wired.observations().load(station, List.of(day(-20)));
		AtomicInteger tries = new AtomicInteger();
		Double minimum = OneVersion.of(ahead.stations(), () -> {
			tries.incrementAndGet();
			StoredStation stored = ahead.stations().of(HERE).get(0);
			return this.wired.climate().climate(stored).record().value(Element.TMIN, LocalDate.of(2026, 6, 1)) / 10.0;
		});
		assertThat(minimum).isEqualTo(-2);
		assertThat(tries).hasValue(2);
	}

	@Test
	void keptValuesAreBoundAndByVersion() {
		BoundedCache<Integer, String> cache = new BoundedCache<>(2);
		AtomicInteger made = new AtomicInteger();
		for (int key : new int[] { 1, 2, 1, 3, 1, 2 }) {
			assertThat(cache.get(key, () -> "made " + key + " " + made.incrementAndGet())).startsWith("made " + key);
		}
		assertThat(made).as("2 was longest unused when 3 came").hasValue(4);
	}

	private String text(Forecasts forecasts) {
		return new SurroundingsReader(this.wired.stations(), forecasts).of(List.of(HERE)).fingerprint(HERE);
	}

	private Forecasts forecasts(ClimateFixture wired) {
		return forecasts(wired, CLOCK);
	}

	private Forecasts forecasts(ClimateFixture wired, Clock clock) {
		OutsideTables tables = OutsideTables.on(this.source);
		return new Forecasts(wired.tables().stations(), tables.forecasts(), tables.fetches(),
				new TransactionTemplate(new JdbcTransactionManager(this.source)), clock, Duration.ofHours(12),
				wired.events()::add);
	}

	private static Station station(int number, GeoPoint point) {
		return new Station(new StationId("XX%09d".formatted(number)), "Made up", point, true);
	}

	private static ObservedDay day(int minimum) {
		return new ObservedDay(LocalDate.of(2026, 6, 1), minimum, 100, 0, null, null);
	}

	private static ForecastDay ahead(int minimum) {
		return new ForecastDay(LocalDate.of(2026, 7, 2), minimum, 200, 0, null, null, null);
	}

}
