package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.SeasonOutcome.State;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class NightAndGroundTests {

	private static final Season NORTH = new Season(2020, Hemisphere.NORTH);

	@Test
	void nightsAreWarmOnTheLastOfFiveWhoseMeanReachesTheLimit() {
		DailyRecord record = RecordFixture.constant("2019-12-01", "2021-07-31", 0,
				Map.of("2020-04-01", 100, "2020-04-02", 100, "2020-04-03", 100, "2020-04-04", 100, "2020-04-05", 100));
		assertThat(NightSearch.warmTo(record, NORTH, 500).date()).isEqualTo("2020-04-05");
		assertThat(NightSearch.warmTo(record, NORTH, 300).date()).isEqualTo("2020-04-03");
		assertThat(NightSearch.warmTo(record, NORTH, 501).state()).isEqualTo(State.WITHOUT);
		assertThat(NightSearch.warmTo(record, NORTH, 0).date()).isEqualTo("2020-01-01");
	}

	@Test
	void nightsAreCoolFromMidsummerOn() {
		DailyRecord record = RecordFixture.constant("2019-12-01", "2021-07-31", 150,
				Map.of("2020-09-10", 0, "2020-09-11", 0, "2020-09-12", 0, "2020-09-13", 0, "2020-09-14", 0));
		assertThat(NightSearch.coolTo(record, NORTH, 300).date()).isEqualTo("2020-09-12");
		assertThat(NightSearch.coolTo(record, NORTH, -1).state()).isEqualTo(State.WITHOUT);
		assertThat(NightSearch.coolTo(record, NORTH, 750).date()).isEqualTo("2020-08-01");
	}

	@Test
	void aMeanWithAMissingNightIsNoMean() {
		Map<String, Integer> days = new HashMap<>();
		for (int day = 1; day <= 8; day++) {
			days.put("2020-04-0" + day, (day == 3) ? null : Integer.valueOf(100));
		}
		DailyRecord record = RecordFixture.constant("2019-12-01", "2021-07-31", 0, days);
		assertThat(NightSearch.warmTo(record, NORTH, 300).date()).isEqualTo("2020-04-08");
	}

	/** By hand: each day a quarter of the difference, so 10 · 0.75ⁿ after n days. */
	@Test
	void soilFollowsTheAirByAQuarterADay() {
		SoilTemperature soil = SoilTemperature.estimate(step(0));
		assertThat(soil.celsius(LocalDate.of(2020, 1, 31).toEpochDay())).isCloseTo(10, within(1e-4f));
		assertThat(soil.celsius(LocalDate.of(2020, 2, 1).toEpochDay())).isCloseTo(7.5f, within(1e-4f));
		assertThat(soil.celsius(LocalDate.of(2020, 2, 4).toEpochDay())).isCloseTo(3.1640625f, within(1e-4f));
	}

	/** By hand: each day a tenth of the difference, so 10 · 0.9ⁿ after n days. */
	@Test
	void soilUnderSnowFollowsByATenth() {
		SoilTemperature soil = SoilTemperature.estimate(step(SoilTemperature.SNOW_DEPTH));
		assertThat(soil.celsius(LocalDate.of(2020, 2, 4).toEpochDay())).isCloseTo(6.561f, within(1e-4f));
	}

	@Test
	void soilIsUnknownInALongGapAndStartsAnew() {
		DailyRecord.Builder builder = DailyRecord.builder();
		air(builder, "2020-01-01", "2020-01-31", 10);
		air(builder, "2020-03-01", "2020-03-31", -5);
		SoilTemperature soil = SoilTemperature.estimate(builder.build());
		assertThat(soil.celsius(LocalDate.of(2020, 2, 10).toEpochDay())).isEqualTo(10);
		assertThat(soil.celsius(LocalDate.of(2020, 2, 11).toEpochDay())).isNaN();
		assertThat(soil.celsius(LocalDate.of(2020, 3, 1).toEpochDay())).isEqualTo(-5);
	}

	@Test
	void groundFreezesAndThawsByRunsOfFiveDays() {
		DailyRecord.Builder builder = DailyRecord.builder();
		air(builder, "2019-08-01", "2019-12-09", 8);
		air(builder, "2019-12-10", "2020-03-10", -8);
		air(builder, "2020-03-11", "2020-12-19", 8);
		air(builder, "2020-12-20", "2021-03-10", -8);
		air(builder, "2021-03-11", "2021-07-31", 8);
		SoilTemperature soil = SoilTemperature.estimate(builder.build());
		// 16 · 0.75ⁿ - 8 is at or below zero from n = 3 on: 10, 11, 12 December
		assertThat(GroundSearch.freeze(soil, NORTH.previous(), 0).date()).isEqualTo("2019-12-12");
		// 8 - 16 · 0.75ⁿ is above 1.1 from n = 3 on: 11, 12, 13 March
		assertThat(GroundSearch.thaw(soil, NORTH, 0).date()).isEqualTo("2020-03-13");
		assertThat(GroundSearch.freeze(soil, NORTH, 0).date()).isEqualTo("2020-12-22");
		assertThat(GroundSearch.freeze(soil, NORTH, -20).state()).isEqualTo(State.WITHOUT);
		assertThat(GroundSearch.thaw(soil, NORTH, -20).state()).isEqualTo(State.WITHOUT);
		assertThat(GroundSearch.thaw(soil, NORTH, 20).state()).isEqualTo(State.WITHOUT);
		assertThat(GroundSearch.thaw(soil, NORTH.previous().previous(), 0).state()).isEqualTo(State.LEFT_OUT);
	}

	private static DailyRecord step(int snow) {
		DailyRecord.Builder builder = DailyRecord.builder();
		air(builder, "2020-01-01", "2020-01-31", 10);
		air(builder, "2020-02-01", "2020-02-28", 0);
		for (int day = 1; day <= 28; day++) {
			builder.set(Element.SNWD, LocalDate.of(2020, 2, day), snow);
		}
		return builder.build();
	}

	private static void air(DailyRecord.Builder builder, String from, String to, int celsius) {
		for (LocalDate day = LocalDate.parse(from); !day.isAfter(LocalDate.parse(to)); day = day.plusDays(1)) {
			builder.set(Element.TMIN, day, celsius * 10 - 50);
			builder.set(Element.TMAX, day, celsius * 10 + 50);
		}
	}

}
