package org.leafward.climate.core.season;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.climate.ChillSoFar;
import org.leafward.climate.HeatSoFar;
import org.leafward.climate.TemperatureSeason;
import org.leafward.climate.TemperatureShift;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.SeasonProjection.ForecastDay;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Hand-made records whose sums can be told by heart: past years have 10 to 20 °C each
 * day, 59 °F on the mean, 9 degree-days above 50 °F; this season has 12 to 22 °C, 62.6 °F
 * and 12.6 degree-days. A day of 5 °C has 24 chill hours and 24 Utah units (41 °F).
 */
class SeasonCourseTests {

	private static final TemperatureThreshold BASE = new TemperatureThreshold(50, true);

	private static final TemperatureShift LEVEL = TemperatureShift.height(0);

	private static final SeasonPeriod NORMALS = new SeasonPeriod(2014, 2025);

	private static final Season NORTH = new Season(2026, Hemisphere.NORTH);

	@Test
	void aWarmSeasonIsAheadByTheDaysThatItsSumIsWorth() {
		HeatSoFar heat = heat(record("2026-04-30", null, null), 0, List.of());
		assertThat(heat.observed()).hasSize(61);
		assertThat(heat.latest().day()).isEqualTo(LocalDate.of(2026, 4, 30));
		assertThat(heat.latest().sum()).isCloseTo(61 * 12.6, within(1e-6));
		HeatSoFar.Normal then = heat.normalOn(LocalDate.of(2026, 4, 30));
		assertThat(List.of(then.low(), then.middle(), then.high()))
			.allSatisfy((sum) -> assertThat(sum).isCloseTo(61 * 9, within(1e-6)));
		// 768.6 is reached by the 86th day of a normal year; this is the 61st.
		assertThat(heat.aheadDays()).isEqualTo(25);
		assertThat(heat.missing()).isNull();
		assertThat(heat.normal()).hasSize(306)
			.last()
			.extracting(HeatSoFar.Normal::day)
			.isEqualTo(LocalDate.of(2026, 12, 31));
	}

	@Test
	void theRestIsProjectedFromForecastAndPastYears() {
		HeatSoFar plain = heat(record("2026-04-30", null, null), 0, List.of());
		// 768.6 and 26 days of 9.
		assertThat(goal(plain, 1000).date()).isEqualTo(LocalDate.of(2026, 5, 26));
		assertThat(goal(plain, 1000).basis()).isEqualTo(HeatSoFar.Basis.NORMAL);
		// 12 days of 9 from 1 March.
		assertThat(goal(plain, 100).usual()).isEqualTo(LocalDate.of(2026, 3, 12));
		assertThat(goal(plain, 100).date()).isEqualTo(LocalDate.of(2026, 3, 8));
		assertThat(goal(plain, 100).basis()).isEqualTo(HeatSoFar.Basis.OBSERVED);
		assertThat(plain.projected().get(0).sum()).isCloseTo(768.6, within(1e-6));
		assertThat(plain.projected().get(10).sum()).isCloseTo(768.6 + 10 * 9, within(1e-6));
		// A forecast day of 20 to 30 °C has 77 °F and 27 degree-days.
		HeatSoFar forecast = heat(record("2026-04-30", null, null), 0,
				List.of(new ForecastDay(LocalDate.of(2026, 5, 1), 20, 30)));
		assertThat(forecast.forecastDays()).isEqualTo(1);
		assertThat(forecast.projected().get(1).sum()).isCloseTo(768.6 + 27, within(1e-6));
		assertThat(goal(forecast, 780).basis()).isEqualTo(HeatSoFar.Basis.FORECAST);
	}

	@Test
	void aHigherPlaceHasLess() {
		// 2 °C are 3.6 °F.
		HeatSoFar heat = heat(record("2026-04-30", null, null), 2, List.of());
		assertThat(heat.latest().sum()).isCloseTo(61 * 9, within(1e-6));
	}

	@Test
	void aLongGapIsSaidAndNeverCountsAsNothing() {
		HeatSoFar heat = heat(record("2026-04-30", "2026-04-01", "2026-04-06"), 0, List.of());
		assertThat(heat.latest().day()).isEqualTo(LocalDate.of(2026, 3, 31));
		assertThat(heat.missing()).contains("from 2026-04-01 on");
		assertThat(heat.projected()).isEmpty();
		assertThat(goal(heat, 1000).basis()).isEqualTo(HeatSoFar.Basis.UNKNOWN);
		HeatSoFar bridged = heat(record("2026-04-30", "2026-04-01", "2026-04-05"), 0, List.of());
		assertThat(bridged.latest().sum()).isCloseTo(61 * 12.6, within(1e-6));
		assertThat(bridged.bridged()).isEqualTo(5);
	}

	@Test
	void aRecordThatEndsEarlyStillHasTheNormalCourse() {
		HeatSoFar heat = heat(record("2025-12-31", null, null), 0, List.of());
		assertThat(heat.latest()).isNull();
		assertThat(heat.aheadDays()).isNull();
		assertThat(heat.normal()).hasSize(306);
		assertThat(heat.projected().get(99).sum()).isCloseTo(900, within(1e-6));
		assertThat(goal(heat, 100).date()).isEqualTo(LocalDate.of(2026, 3, 12));
	}

	@Test
	void tooFewYearsAreNoNormal() {
		HeatSoFar heat = HeatCourse.of(record("2026-04-30", null, null), new SeasonPeriod(2020, 2025), LEVEL, NORTH,
				BASE, List.of(), List.of(100));
		assertThat(heat.normal()).isEmpty();
		assertThat(heat.missing()).contains("Fewer than 10");
		assertThat(heat.latest().sum()).isCloseTo(61 * 12.6, within(1e-6));
	}

	@Test
	void theSouthCountsFromSeptember() {
		HeatSoFar heat = HeatCourse.of(record("2026-10-31", null, null), NORMALS, LEVEL,
				new Season(2026, Hemisphere.SOUTH), BASE, List.of(), List.of(100));
		assertThat(heat.from()).isEqualTo(LocalDate.of(2026, 9, 1));
		assertThat(heat.latest().sum()).isCloseTo(61 * 12.6, within(1e-6));
		assertThat(heat.normal()).hasSize(303)
			.last()
			.extracting(HeatSoFar.Normal::day)
			.isEqualTo(LocalDate.of(2027, 6, 30));
	}

	@Test
	void temperaturesStandBesideTheirMeans() {
		TemperatureSeason season = TemperatureCourse.of(record("2026-04-30", "2026-04-01", "2026-04-02"), NORMALS,
				TemperatureShift.height(1), NORTH);
		assertThat(season.days()).hasSize(365);
		assertThat(season.missingDays()).isEqualTo(2);
		assertThat(season.days().get(0))
			.isEqualTo(new TemperatureSeason.Day(LocalDate.of(2026, 1, 1), 11.0, 21.0, 9.0, 19.0));
		assertThat(season.days().get(90).low()).isNull();
		assertThat(season.days().get(364).low()).isNull();
		assertThat(season.days().get(364).normalHigh()).isEqualTo(19);
	}

	@Test
	void chillIsCountedUpToTheDayBesidePastWinters() {
		DailyRecord.Builder cold = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2013, 1, 1); !day.isAfter(LocalDate.of(2026, 11, 25)); day = day
			.plusDays(1)) {
			cold.set(Element.TMIN, day, 50);
			cold.set(Element.TMAX, day, 50);
		}
		ChillSoFar chill = ChillCourse.of(cold.build(), NORMALS, LEVEL, new Season(2027, Hemisphere.NORTH), 42);
		assertThat(chill.until()).isEqualTo(LocalDate.of(2026, 11, 24));
		// 85 days from 1 September, 24 days from 1 November.
		assertThat(chill.observed().utah()).isEqualTo(85 * 24);
		assertThat(chill.observed().hours()).isEqualTo(24 * 24);
		assertThat(chill.normalSoFar().utah()).isEqualTo(85 * 24);
		assertThat(chill.normalSoFar().portions()).isEqualTo(chill.observed().portions());
		assertThat(chill.normalWhole().hours()).isEqualTo(120 * 24);
		assertThat(chill.years()).isEqualTo(12);
		ChillSoFar later = ChillCourse.of(cold.build(), NORMALS, LEVEL, new Season(2028, Hemisphere.NORTH), 42);
		assertThat(later.observed()).isNull();
		assertThat(later.missing()).isEqualTo("No day of this winter has been observed.");
		assertThat(later.normalWhole()).isEqualTo(chill.normalWhole());
	}

	private static HeatSoFar heat(DailyRecord record, double colderBy, List<ForecastDay> forecast) {
		return HeatCourse.of(record, NORMALS, TemperatureShift.height(colderBy), NORTH, BASE, forecast,
				List.of(100, 780, 1000));
	}

	private static HeatSoFar.Goal goal(HeatSoFar heat, int sum) {
		return heat.goals().stream().filter((goal) -> goal.sum() == sum).findFirst().orElseThrow();
	}

	private static DailyRecord record(String last, String gapFrom, String gapTo) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2013, 1, 1); !day.isAfter(LocalDate.parse(last)); day = day.plusDays(1)) {
			boolean gap = gapFrom != null && !day.isBefore(LocalDate.parse(gapFrom))
					&& !day.isAfter(LocalDate.parse(gapTo));
			if (!gap) {
				int warmer = (day.getYear() == 2026) ? 20 : 0;
				builder.set(Element.TMIN, day, 100 + warmer);
				builder.set(Element.TMAX, day, 200 + warmer);
			}
		}
		return builder.build();
	}

}
