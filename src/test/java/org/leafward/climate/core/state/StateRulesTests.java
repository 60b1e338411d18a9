package org.leafward.climate.core.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.DroughtReading;
import org.leafward.climate.GroundReading;
import org.leafward.climate.NamedState;
import org.leafward.climate.StateQuestion;
import org.leafward.measure.Explanation;

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
		List<DayFigures> forecast = List.of(ahead(1, minimum, 10.0, 2.0, 60.0), ahead(2, 5.0, 10.0, 2.0, 60.0),
				ahead(3, 5.0, 10.0, 2.0, 60.0));
		assertThat(holds(NamedState.FROST_AHEAD, List.of(), forecast)).isEqualTo(frost);
		assertThat(holds(NamedState.HARD_FREEZE_AHEAD, List.of(), forecast)).isEqualTo(hard);
	}

	@Test
	void looksThreeDaysAheadAndNoFarther() {
		assertThat(holds(NamedState.FROST_AHEAD, List.of(), List.of(ahead(3, -5.0, 5.0, 2.0, 60.0)))).isTrue();
		assertThat(holds(NamedState.FROST_AHEAD, List.of(),
				List.of(ahead(0, 5.0, 9.0, 2.0, 60.0), ahead(1, 5.0, 9.0, 2.0, 60.0), ahead(2, 5.0, 9.0, 2.0, 60.0),
						ahead(3, 5.0, 9.0, 2.0, 60.0), ahead(4, -5.0, 5.0, 2.0, 60.0))))
			.isFalse();
	}

	/** Frost may lie in what a short or gappy forecast leaves out. */
	@Test
	void aForecastOfTwoDaysSaysYesButNeverNo() {
		List<DayFigures> mild = List.of(ahead(0, 5.0, 9.0, 2.0, 60.0), ahead(1, 5.0, 9.0, 2.0, 60.0));
		assertThat(holds(NamedState.FROST_AHEAD, List.of(), mild)).isNull();
		assertThat(ask("forecast-min-at-least-36f", mild)).isNull();
		assertThat(ask("forecast-min-at-least-45f", mild)).isFalse();
		assertThat(ask("forecast-min-at-most-45f", mild)).isTrue();
		List<DayFigures> gap = List.of(ahead(1, 5.0, 9.0, 2.0, 60.0), ahead(2, null, 9.0, 2.0, 60.0),
				ahead(3, 5.0, 9.0, 2.0, 60.0));
		assertThat(holds(NamedState.FROST_AHEAD, List.of(), gap)).isNull();
		assertThat(ask("forecast-max-at-most-84f", gap)).isTrue();
	}

	/** 85 °F is 29.4 °C in tenths, 84 °F 28.9; both ways round at any threshold. */
	@ParameterizedTest
	@CsvSource({ "forecast-max-at-least-85f,29.4,true", "forecast-max-at-least-85f,29.3,false",
			"forecast-max-at-most-84f,28.9,true", "forecast-max-at-most-84f,29.0,false",
			"forecast-max-at-least-29.5c,29.4,false", "forecast-min-at-most-minus-5c,29.4,false",
			// NWS chart: 90 °F (32.2 °C) and 60 % feel like 100 °F
			"heat-index-at-least-99f,32.2,true", "heat-index-at-least-102f,32.2,false",
			"heat-index-at-most-99f,32.2,false", "heat-index-at-most-102f,32.2,true",
			"forecast-wind-at-most-10mph,20,true", "forecast-wind-at-most-4mph,20,false" })
	void asksForAnyThreshold(String question, double maximum, boolean holds) {
		assertThat(ask(question, List.of(ahead(1, 15.0, 20.0, 1.0, 60.0), ahead(2, 15.0, maximum, 2.0, 60.0),
				ahead(3, 15.0, 20.0, 1.0, 60.0))))
			.isEqualTo(holds);
	}

	@Test
	void dryDaysAheadNeedEachDayOfTheForecast() {
		List<DayFigures> days = List.of(dayWithRain(0, 0.0), dayWithRain(1, 0.2), dayWithRain(2, 0.3));
		assertThat(ask("dry-ahead-2d", days)).isTrue();
		assertThat(ask("dry-ahead-3d", days)).isFalse();
		assertThat(ask("dry-ahead-9d", days)).isFalse();
		assertThat(ask("dry-ahead-3d", days.subList(0, 2))).isNull();
	}

	@Test
	void countsAnyNumberOfDryDays() {
		List<DayFigures> week = rain(7, 1.5);
		assertThat(rules(week, List.of(), null).answer(StateQuestion.parse("dry-days-7d")).holds()).isTrue();
		assertThat(rules(week, List.of(), null).answer(StateQuestion.parse("dry-days-8d")).holds())
			.as("the eighth day is not known")
			.isNull();
		assertThat(rules(rain(9, 1.5), List.of(), null).answer(StateQuestion.parse("dry-days-9d")).holds())
			.as("13.5 mm in all")
			.isFalse();
	}

	@ParameterizedTest
	@CsvSource({ ",drought-at-least-d0,false", "0,drought-at-least-d0,true", "0,drought-at-least-d1,false",
			"1,drought-at-least-d1,true", "4,drought-at-least-d1,true", "2,drought-at-least-d3,false" })
	void droughtIsAtLeastAClass(Integer severity, String question, boolean holds) {
		DroughtReading reading = new DroughtReading(TODAY, -1, severity, "words", Explanation.of("a", "b"));
		StateRules rules = rules(List.of(), List.of(), reading);
		assertThat(rules.answer(StateQuestion.parse(question)).holds()).isEqualTo(holds);
	}

	@Test
	void neverTakesTheUnknownForANo() {
		assertThat(rules(List.of(), List.of(), null).named()).hasSameSizeAs(NamedState.values())
			.allSatisfy((state) -> assertThat(state.holds()).as(state.code()).isNull());
	}

	@ParameterizedTest
	@CsvSource({
			// 90 °F is 32.2 °C, 15 mph is 6.7 m/s
			"32.3,6.8,60,0,true", "32.3,2,30,0,true", "32.3,2,60,0,false", "32.1,9,10,0,false", "35,9,10,12.7,false",
			"35,9,10,12.6,true" })
	void knowsAHotDryWind(double maximum, double wind, double humidity, double rainThisWeek, boolean holds) {
		List<DayFigures> observed = rain(21, 0);
		observed.set(18, past(3, rainThisWeek));
		assertThat(holds(NamedState.HOT_DRY_WIND, observed, List.of(ahead(1, 15.0, maximum, wind, humidity),
				ahead(2, 15.0, 20.0, 2.0, 60.0), ahead(3, 15.0, 20.0, 2.0, 60.0))))
			.isEqualTo(holds);
	}

	@Test
	void aHotDayWithoutWindAndHumidityIsNotSettled() {
		DayFigures day = new DayFigures(TODAY, 15.0, 36.0, null, null, null, null);
		assertThat(holds(NamedState.HOT_DRY_WIND, rain(21, 0), List.of(day))).isNull();
	}

	@Test
	void countsDrySpellsByDayAndByTotal() {
		assertThat(holds(NamedState.LONG_DRY_SPELL, rain(21, 0.5), List.of())).isTrue();
		assertThat(holds(NamedState.LONG_DRY_SPELL, rain(21, 0.7), List.of())).as("14.7 mm in all").isFalse();
		assertThat(holds(NamedState.DRY_SPELL, rain(21, 0.7), List.of())).as("9.8 mm in two weeks").isTrue();
		List<DayFigures> shower = rain(21, 0);
		shower.set(12, past(9, 6.4));
		assertThat(holds(NamedState.DRY_SPELL, shower, List.of())).as("a quarter of an inch in a day").isFalse();
		List<DayFigures> gap = rain(21, 0);
		gap.remove(20);
		assertThat(holds(NamedState.DRY_SPELL, gap, List.of())).as("yesterday is not known").isNull();
	}

	@Test
	void knowsThawAndSnowOfTheDay() {
		DayFigures day = new DayFigures(TODAY, -3.0, 4.5, null, 80.0, null, null);
		assertThat(holds(NamedState.THAW_DAY, List.of(), List.of(day))).isTrue();
		assertThat(holds(NamedState.HEAVY_SNOW, List.of(), List.of(day))).isTrue();
		DayFigures less = new DayFigures(TODAY, -3.0, 4.4, null, 76.0, null, null);
		assertThat(holds(NamedState.THAW_DAY, List.of(), List.of(less))).isFalse();
		assertThat(holds(NamedState.HEAVY_SNOW, List.of(), List.of(less))).isFalse();
	}

	/** An inch is 25.4 mm. */
	@Test
	void knowsTheRainOfAWeek() {
		StateQuestion inch = StateQuestion.parse("rain-week-at-least-1in");
		assertThat(rules(rain(7, 3.7), List.of(), null).answer(inch).holds()).as("25.9 mm").isTrue();
		assertThat(rules(rain(7, 3.6), List.of(), null).answer(inch).holds()).as("25.2 mm").isFalse();
		assertThat(rules(rain(6, 3.6), List.of(), null).answer(inch).holds()).as("a day isn't known").isNull();
		assertThat(rules(rain(6, 4.3), List.of(), null).answer(inch).holds()).as("enough without it").isTrue();
		assertThat(rules(rain(7, 25.4 / 7), List.of(), null).answer(inch).holds()).as("an inch").isTrue();
	}

	@Test
	void asksAboutSingleDaysToCome() {
		StateRules rules = rules(rain(21, 0),
				List.of(ahead(0, 5.0, 9.0, 2.0, 60.0), ahead(1, 3.0, 9.0, 2.0, 60.0), ahead(2, -1.0, 9.0, 2.0, 60.0)),
				null);
		StateQuestion frost = NamedState.FROST_AHEAD.question();
		assertThat(rules.answer(frost).holds()).isTrue();
		assertThat(rules.on(TODAY, frost).holds()).isFalse();
		assertThat(rules.on(TODAY.plusDays(1), frost).holds()).isFalse();
		assertThat(rules.on(TODAY.plusDays(2), frost).holds()).isTrue();
		assertThat(rules.on(TODAY.plusDays(3), frost).holds()).as("beyond the forecast").isNull();
	}

	/** Rain that is forecast before a day ends the dry spell that it would have had. */
	@Test
	void looksBackFromADayToComeOverTheForecast() {
		StateQuestion dry = StateQuestion.parse("dry-days-10d");
		StateRules rules = rules(rain(21, 0), List.of(dayWithRain(0, 0.0), dayWithRain(1, 8.0), dayWithRain(2, 0.0)),
				null);
		assertThat(rules.answer(dry).holds()).isTrue();
		assertThat(rules.on(TODAY.plusDays(1), dry).holds()).isTrue();
		assertThat(rules.on(TODAY.plusDays(2), dry).holds()).isFalse();
	}

	private static StateRules rules(List<DayFigures> observed, List<DayFigures> forecast, DroughtReading drought) {
		return new StateRules(TODAY, new StateFigures() {

			@Override
			public List<DayFigures> observed() {
				return observed;
			}

			@Override
			public List<DayFigures> forecast() {
				return forecast;
			}

			@Override
			public DroughtReading drought() {
				return drought;
			}

			@Override
			public GroundReading ground() {
				return null;
			}

		});
	}

	private static Boolean holds(NamedState kind, List<DayFigures> observed, List<DayFigures> forecast) {
		return rules(observed, forecast, null).named()
			.stream()
			.filter((state) -> state.code().equals(kind.code()))
			.findFirst()
			.orElseThrow()
			.holds();
	}

	private static Boolean ask(String question, List<DayFigures> forecast) {
		return rules(List.of(), forecast, null).answer(StateQuestion.parse(question)).holds();
	}

	private static DayFigures dayWithRain(int days, Double rain) {
		return new DayFigures(TODAY.plusDays(days), null, null, rain, null, null, null);
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
