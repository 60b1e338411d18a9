package org.leafward.climate.core.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.WeatherState;
import org.leafward.climate.WeatherState.Kind;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Thresholds: frost products of US National Weather Service offices for 32 °F and 28 °F;
 * watering in winter above 40 °F and dry spells, common practice of extension services;
 * the hot dry wind and great heat, from memory.
 */
class StateRulesTests {

	private static final LocalDate TODAY = LocalDate.parse("2026-07-10");

	@ParameterizedTest
	@CsvSource({ "0.0,true,false", "0.1,false,false", "-2.1,true,false", "-2.2,true,true" })
	void knowsFrostAndHardFreeze(double minimum, boolean frost, boolean hard) {
		List<DayFigures> forecast = List.of(ahead(1, minimum, 10.0, 2.0, 60.0));
		assertThat(holds(Kind.FROST_AHEAD, List.of(), forecast)).isEqualTo(frost);
		assertThat(holds(Kind.HARD_FREEZE_AHEAD, List.of(), forecast)).isEqualTo(hard);
	}

	@Test
	void looksThreeDaysAheadAndNoFarther() {
		assertThat(holds(Kind.FROST_AHEAD, List.of(), List.of(ahead(3, -5.0, 5.0, 2.0, 60.0)))).isTrue();
		assertThat(holds(Kind.FROST_AHEAD, List.of(),
				List.of(ahead(0, 5.0, 9.0, 2.0, 60.0), ahead(4, -5.0, 5.0, 2.0, 60.0))))
			.isFalse();
	}

	@Test
	void neverTakesTheUnknownForANo() {
		assertThat(new StateRules(TODAY, List.of(), List.of()).all()).hasSameSizeAs(Kind.values())
			.allSatisfy((state) -> assertThat(state.holds()).as(state.kind().words()).isNull());
	}

	@ParameterizedTest
	@CsvSource({
			// 90 °F is 32.2 °C, 15 mph is 6.7 m/s
			"32.3,6.8,60,0,true", "32.3,2,30,0,true", "32.3,2,60,0,false", "32.1,9,10,0,false", "35,9,10,12.7,false",
			"35,9,10,12.6,true" })
	void knowsAHotDryWind(double maximum, double wind, double humidity, double rainThisWeek, boolean holds) {
		List<DayFigures> observed = rain(21, 0);
		observed.set(18, past(3, rainThisWeek));
		assertThat(holds(Kind.HOT_DRY_WIND, observed, List.of(ahead(1, 15.0, maximum, wind, humidity))))
			.isEqualTo(holds);
	}

	@Test
	void aHotDayWithoutWindAndHumidityIsNotSettled() {
		DayFigures day = new DayFigures(TODAY, 15.0, 36.0, null, null, null, null);
		assertThat(holds(Kind.HOT_DRY_WIND, rain(21, 0), List.of(day))).isNull();
	}

	@Test
	void countsDrySpellsByDayAndByTotal() {
		assertThat(holds(Kind.LONG_DRY_SPELL, rain(21, 0.5), List.of())).isTrue();
		assertThat(holds(Kind.LONG_DRY_SPELL, rain(21, 0.7), List.of())).as("14.7 mm in all").isFalse();
		assertThat(holds(Kind.DRY_SPELL, rain(21, 0.7), List.of())).as("9.8 mm in two weeks").isTrue();
		List<DayFigures> shower = rain(21, 0);
		shower.set(12, past(9, 6.4));
		assertThat(holds(Kind.DRY_SPELL, shower, List.of())).as("a quarter of an inch in a day").isFalse();
		List<DayFigures> gap = rain(21, 0);
		gap.remove(20);
		assertThat(holds(Kind.DRY_SPELL, gap, List.of())).as("yesterday is not known").isNull();
	}

	@Test
	void knowsThawAndSnowOfTheDay() {
		DayFigures day = new DayFigures(TODAY, -3.0, 4.5, null, 80.0, null, null);
		assertThat(holds(Kind.THAW_DAY, List.of(), List.of(day))).isTrue();
		assertThat(holds(Kind.HEAVY_SNOW, List.of(), List.of(day))).isTrue();
		DayFigures less = new DayFigures(TODAY, -3.0, 4.4, null, 76.0, null, null);
		assertThat(holds(Kind.THAW_DAY, List.of(), List.of(less))).isFalse();
		assertThat(holds(Kind.HEAVY_SNOW, List.of(), List.of(less))).isFalse();
	}

	private static Boolean holds(Kind kind, List<DayFigures> observed, List<DayFigures> forecast) {
		return new StateRules(TODAY, observed, forecast).all()
			.stream()
			.filter((state) -> state.kind() == kind)
			.findFirst()
			.orElseThrow()
			.holds();
	}

	private static DayFigures ahead(int days, Double minimum, Double maximum, Double wind, Double humidity) {
		return new DayFigures(TODAY.plusDays(days), minimum, maximum, null, null, wind, humidity);
	}

	private static DayFigures past(int days, Double rain) {
		return new DayFigures(TODAY.minusDays(days), null, null, rain, null, null, null);
	}

	/** The days before today, the last one yesterday. */
	private static List<DayFigures> rain(int days, double each) {
		List<DayFigures> past = new ArrayList<>();
		for (int back = days; back >= 1; back--) {
			past.add(past(back, each));
		}
		return past;
	}

}
