package org.leafward.climate;

import com.zaxxer.hikari.HikariDataSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.leafward.support.TestDatabase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Weather and water of a place from stations in a real PostgreSQL. */
class WaterStoreTests {

	private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

	private static final LocalDate LAST = LocalDate.of(2026, 12, 31);

	private static final StationId ID = new StationId("XX000000001");

	private static HikariDataSource source;

	private static LocalWeather weather;

	@BeforeAll
	static void open() {
		source = TestDatabase.fresh();
		ClimateFixture wired = ClimateFixture.on(source);
		weather = LocalWeatherFixture.on(wired);
		wired.stations().register(new Station(ID, "Valley", new GeoPoint(45, 10, 100), false));
		List<ObservedDay> days = new ArrayList<>();
		for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
			// Rain of 30 mm on the first of each month but for July to September.
			boolean rain = day.getDayOfMonth() == 1 && (day.getMonthValue() < 7 || day.getMonthValue() > 9);
			days.add(new ObservedDay(day, 100, 220, rain ? 300 : 0, null, null));
		}
		wired.observations().load(ID, days);
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@Test
	void weatherIsMovedToThePlace() {
		WeatherSeries series = weather.at(new GeoPoint(45.1, 10, 300), FIRST, LAST);
		assertThat(series.days()).hasSize(365).allSatisfy((day) -> {
			assertThat(day.minimum()).isCloseTo(8.7, within(1e-9));
			assertThat(day.evapotranspiration()).isBetween(0.3, 6.0);
		});
		assertThat(weather.ofStation(ID, FIRST, LAST).days().get(0).minimum()).isEqualTo(10);
		assertThat(weather.at(new GeoPoint(20, 10, 0), FIRST, FIRST).days().get(0).minimum()).as("far away").isNull();
	}

	@Test
	void bedsDryOutInADrySummerAndRecover() {
		WaterBed bed = new WaterBed("sandy loam", 0.3, 0.8, 0.5, Map.of());
		WaterView view = new WaterBalance(weather).of(new GeoPoint(45, 10, 100), bed, LocalDate.of(2026, 7, 1), LAST)
			.orElseThrow();
		WaterView.Day august = view.days().get(60);
		assertThat(august.date()).isEqualTo(LocalDate.of(2026, 8, 30));
		assertThat(august.stressed()).isTrue();
		assertThat(august.stress()).isLessThan(0.5);
		// Since 2 June.
		assertThat(august.dryDays()).isEqualTo(90);
		WaterView.Day october = view.days().get(92);
		assertThat(october.date()).isEqualTo(LocalDate.of(2026, 10, 1));
		assertThat(october.stressed()).isFalse();
		assertThat(october.dryDays()).isZero();
		WaterBed watered = new WaterBed("sandy loam", 0.3, 0.8, 0.5, Map.of(august.date(), 100.0));
		WaterView.Day after = new WaterBalance(weather)
			.of(new GeoPoint(45, 10, 100), watered, august.date(), august.date())
			.orElseThrow()
			.days()
			.get(0);
		assertThat(after.wetEnough()).isTrue();
		assertThat(after.percolation()).isGreaterThan(50);
	}

	/**
	 * FAO-56, equation 85, without runoff and capillary rise: what the root zone loses in
	 * a period is what it gets less what leaves it. All rain here is heavy enough to
	 * count.
	 */
	@Test
	void theBalanceClosesWithWaterings() {
		LocalDate from = LocalDate.of(2026, 6, 15);
		Map<LocalDate, Double> waterings = new HashMap<>();
		for (int i = 0; i < 9; i++) {
			waterings.put(from.plusDays(11 * i), 3.7 + 6.1 * i);
		}
		WaterBed bed = new WaterBed("sandy loam", 0.3, 0.8, 0.5, waterings);
		WaterView view = new WaterBalance(weather).of(new GeoPoint(45, 10, 100), bed, from, LAST).orElseThrow();
		double expected = view.days().get(0).depletion();
		double given = view.days().get(0).watering();
		for (WaterView.Day day : view.days().subList(1, view.days().size())) {
			expected += day.loss() + day.percolation() - day.rain() - day.watering();
			given += day.watering();
			assertThat(day.depletion()).as(day.date().toString()).isCloseTo(expected, within(0.01));
		}
		assertThat(given).isCloseTo(9 * 3.7 + 36 * 6.1, within(1e-9));
	}

	/**
	 * FAO-56, chapter 8: water before or when depletion passes what is readily available.
	 */
	@Test
	void wateringIsDueOnTheEveningTheReadilyAvailableWaterIsGone() {
		WaterBed bed = new WaterBed("sandy loam", 0.3, 0.8, 0.5, Map.of());
		List<WaterView.Day> days = new WaterBalance(weather)
			.of(new GeoPoint(45, 10, 100), bed, LocalDate.of(2026, 6, 15), LAST)
			.orElseThrow()
			.days();
		assertThat(days).filteredOn(WaterView.Day::due).isNotEmpty();
		for (int i = 1; i < days.size(); i++) {
			WaterView.Day day = days.get(i);
			WaterView.Day before = days.get(i - 1);
			assertThat(day.due()).as(day.date().toString())
				.isEqualTo(day.depletion() > day.readily() && before.depletion() <= before.readily());
		}
	}

	@Test
	void periodsAreBounded() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> weather.ofStation(ID, LAST, FIRST));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> weather.ofStation(ID, FIRST, FIRST.plusDays(1096)))
			.withMessageContaining("1097 days");
		assertThat(weather.ofStation(ID, FIRST, FIRST.plusDays(1095)).days()).hasSize(1096);
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> weather.ofStation(ID, LocalDate.of(1, 1, 1), LocalDate.of(1, 1, 2)));
		assertThatExceptionOfType(NotThere.class)
			.isThrownBy(() -> weather.ofStation(new StationId("XX000000009"), FIRST, LAST));
	}

}
