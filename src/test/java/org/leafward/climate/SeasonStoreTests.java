package org.leafward.climate;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leafward.climate.store.OutsideTables;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** The season and the labels of a place from a station in a real PostgreSQL. */
class SeasonStoreTests {

	private static final GeoPoint VALLEY = new GeoPoint(42, -91, 100);

	private static final LocalDate LAST = LocalDate.of(2026, 4, 30);

	private static HikariDataSource source;

	private static SeasonSoFar seasons;

	private static Forecasts forecasts;

	@BeforeAll
	static void open() {
		source = TestDatabase.fresh();
		ClimateFixture wired = ClimateFixture.on(source);
		OutsideTables tables = OutsideTables.on(source);
		forecasts = new Forecasts(wired.tables().stations(), tables.forecasts(), tables.fetches(),
				new TransactionTemplate(new JdbcTransactionManager(source)),
				Clock.fixed(Instant.parse("2026-05-01T12:00:00Z"), ZoneOffset.UTC), Duration.ofHours(12), (event) -> {
				});
		seasons = new SeasonSoFar(LocalWeatherFixture.on(wired), forecasts);
		StationId id = new StationId("XX000000001");
		wired.stations().register(new Station(id, "Valley", VALLEY, false));
		List<ObservedDay> days = new ArrayList<>();
		for (LocalDate day = LocalDate.of(2013, 1, 1); !day.isAfter(LAST); day = day.plusDays(1)) {
			// One night of −23 °C each winter, all other days 10 to 20 °C.
			boolean coldest = day.getMonthValue() == 1 && day.getDayOfMonth() == 15;
			days.add(new ObservedDay(day, coldest ? -230 : 100, 200, 0, null, null));
		}
		wired.observations().load(id, days);
		StationId warmer = new StationId("XX000000002");
		wired.stations().register(new Station(warmer, "Warmer", new GeoPoint(42.3, -91, 100), false));
		wired.observations()
			.load(warmer, days.stream().map((day) -> new ObservedDay(day.day(), 120, 220, 0, null, null)).toList());
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@Test
	void theForecastGoesOnWithTheSum() {
		forecasts.upload(new StationId("XX000000001"),
				"# issued: 2026-05-01T06:00:00Z\ndate,min_c,max_c\n2026-05-01,20,30\n2026-05-02,20,30\n");
		SeasonView view = seasons.of(Place.of(VALLEY), 2026, LocalDate.of(2026, 5, 1)).orElseThrow();
		assertThat(view.recordEnd()).isNull();
		assertThat(view.lastObserved()).isEqualTo(LAST);
		// 61 days of 9, then two of 27.
		assertThat(view.heat().latest().sum()).isCloseTo(549, within(1e-6));
		assertThat(view.heat().aheadDays()).isZero();
		assertThat(view.heat().forecastDays()).isEqualTo(2);
		assertThat(view.heat().projected().get(1).sum()).isCloseTo(549 + 54, within(1e-6));
		assertThat(view.forecast().stale()).isFalse();
		assertThat(view.explanation().steps().get(0).value()).startsWith("Valley");
	}

	/**
	 * A hollow is 2 °C colder at night, so the mean of 8 and 20 °C lies 4 °C above 10 °C:
	 * 7.2 °F on each of 61 days. Two hundred metres higher all is 1.3 °C colder.
	 */
	@Test
	void nightsOfAHollowCountInMinimaAndByHalfInSums() {
		Place hollow = new Place(new GeoPoint(42, -91, 300),
				new Microclimate(Microclimate.Lie.HOLLOW, false, false, null));
		SeasonView view = seasons.of(hollow, 2026, LocalDate.of(2026, 5, 1)).orElseThrow();
		assertThat(view.temperatures().days().get(100).low()).isCloseTo(10 - 1.3 - 2, within(1e-9));
		assertThat(view.temperatures().days().get(100).high()).isCloseTo(20 - 1.3, within(1e-9));
		assertThat(view.heat().latest().sum()).isCloseTo(61 * 1.8 * (15 - 10 - 1.3 - 1), within(1e-6));
		assertThat(view.explanation().steps().get(2).detail()).contains("minima are taken as 3.3 °C colder",
				"maxima as 1.3 °C colder", "2.3 °C colder");
		SeasonView flat = seasons
			.of(new Place(VALLEY, new Microclimate(Microclimate.Lie.HOLLOW, false, false, null)), 2026,
					LocalDate.of(2026, 5, 1))
			.orElseThrow();
		assertThat(flat.heat().latest().sum()).isCloseTo(61 * 7.2, within(1e-6));
	}

	@Test
	void otherStationsAreAskedForTheSameSum() {
		SeasonView view = seasons.of(Place.of(VALLEY), 2026, LocalDate.of(2026, 5, 1)).orElseThrow();
		assertThat(view.around()).singleElement().satisfies((one) -> {
			assertThat(one.station().name()).isEqualTo("Warmer");
			// 17 °C is 7 °C above the base: 12.6 °F on each of 61 days.
			assertThat(one.sum()).isCloseTo(61 * 12.6, within(1e-6));
		});
	}

	@Test
	void aRecordThatEndsIsSaid() {
		assertThat(seasons.of(Place.of(VALLEY), 2027, LocalDate.of(2027, 3, 1)).orElseThrow().recordEnd())
			.isEqualTo("The record of Valley ends on 30 Apr 2026; what follows is the normal course.");
		assertThat(seasons.of(Place.of(VALLEY), 2026, LocalDate.of(2026, 5, 8)).orElseThrow().recordEnd()).isNotNull();
	}

	@Test
	void nothingIsKnownFarAwayAndSeasonsAreBounded() {
		assertThat(seasons.of(Place.of(new GeoPoint(10, 10, 0)), 2026, LAST)).isEmpty();
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> seasons.of(Place.of(VALLEY), 2199, LAST));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> seasons.chill(Place.of(VALLEY), 1699));
		assertThat(SeasonSoFar.winterOn(LocalDate.of(2026, 8, 31), Hemisphere.NORTH)).isEqualTo(2026);
		assertThat(SeasonSoFar.winterOn(LocalDate.of(2026, 9, 1), Hemisphere.NORTH)).isEqualTo(2027);
		assertThat(SeasonSoFar.winterOn(LocalDate.of(2027, 2, 28), Hemisphere.SOUTH)).isEqualTo(2026);
		assertThat(SeasonSoFar.winterOn(LocalDate.of(2027, 3, 1), Hemisphere.SOUTH)).isEqualTo(2027);
	}

	/**
	 * −23 °C are −9.4 °F, half zone 6a; 500 m higher it is 3.25 °C colder, −15.3 °F, 5a.
	 */
	@Test
	void labels() {
		PlaceLabels labels = new PlaceLabels(seasons);
		ZoneId zone = ZoneId.of("America/Chicago");
		PlaceFacts valley = labels.of(VALLEY, LocalDate.of(2026, 6, 21), zone);
		assertThat(valley.zone()).isEqualTo("6a");
		assertThat(valley.extremeMinimum()).isCloseTo(-23, within(1e-9));
		// The longest day at 42° N, about 15 h 14 min (common knowledge, to a few
		// minutes).
		assertThat(valley.dayLength()).isBetween(15 * 60 + 8L, 15 * 60 + 20L);
		assertThat(valley.light()).hasSize(12).allSatisfy((month) -> {
			assertThat(month.typical()).isPositive().isLessThanOrEqualTo(month.clear());
			assertThat(month.morning()).isPositive().isLessThan(month.typical());
		});
		assertThat(labels.of(new GeoPoint(42, -91, 600), LAST, zone).zone()).isEqualTo("5a");
		PlaceFacts far = labels.of(new GeoPoint(80, 10, 0), LocalDate.of(2026, 6, 21), ZoneOffset.UTC);
		assertThat(far.zone()).isNull();
		assertThat(far.whyNoZone()).contains("150 km");
		assertThat(far.sun()).isEqualTo("The sun stays up all day.");
		assertThat(far.light().get(5).typical()).isNull();
	}

}
