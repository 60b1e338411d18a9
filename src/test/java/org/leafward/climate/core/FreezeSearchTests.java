package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leafward.climate.core.SeasonOutcome.State;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;

import static org.assertj.core.api.Assertions.assertThat;

class FreezeSearchTests {

	private static final Season NORTH = new Season(2020, Hemisphere.NORTH);

	@Test
	void aFreezeExactlyAtTheThresholdCounts() {
		DailyRecord record = RecordFixture.constant("2019-08-01", "2021-07-31", 50,
				Map.of("2020-05-10", 0, "2020-05-20", 1, "2020-10-03", 0, "2020-10-01", 1));
		assertThat(FreezeSearch.lastSpring(record, NORTH, 0).date()).isEqualTo("2020-05-10");
		assertThat(FreezeSearch.firstFall(record, NORTH, 0).date()).isEqualTo("2020-10-03");
	}

	@Test
	void midsummerDayBelongsToFall() {
		DailyRecord record = RecordFixture.constant("2019-08-01", "2021-07-31", 50,
				Map.of("2020-07-31", -1, "2020-08-01", -1));
		assertThat(FreezeSearch.lastSpring(record, NORTH, 0).date()).isEqualTo("2020-07-31");
		assertThat(FreezeSearch.firstFall(record, NORTH, 0).date()).isEqualTo("2020-08-01");
		assertThat(FreezeSearch.frostFreeDays(FreezeSearch.lastSpring(record, NORTH, 0),
				FreezeSearch.firstFall(record, NORTH, 0)))
			.hasValue(0);
	}

	@Test
	void tenMissingDaysOnTheWayArePutUpWithAndElevenAreNot() {
		Map<String, Integer> days = new HashMap<>(Map.of("2020-05-01", -5));
		for (int day = 1; day <= 10; day++) {
			days.put(LocalDate.of(2020, 6, day).toString(), null);
		}
		SeasonOutcome ten = FreezeSearch.lastSpring(RecordFixture.constant("2019-08-01", "2021-07-31", 50, days), NORTH,
				0);
		assertThat(ten.state()).isEqualTo(State.DATED);
		assertThat(ten.missing()).isEqualTo(10);
		days.put("2020-07-01", null);
		SeasonOutcome eleven = FreezeSearch.lastSpring(RecordFixture.constant("2019-08-01", "2021-07-31", 50, days),
				NORTH, 0);
		assertThat(eleven.state()).isEqualTo(State.LEFT_OUT);
	}

	@Test
	void daysMissingBeyondTheFreezeDontMatter() {
		DailyRecord record = RecordFixture.constant("2020-04-20", "2020-11-10", 50,
				Map.of("2020-05-10", -8, "2020-10-03", -8));
		assertThat(FreezeSearch.lastSpring(record, NORTH, 0).date()).isEqualTo("2020-05-10");
		assertThat(FreezeSearch.firstFall(record, NORTH, 0).date()).isEqualTo("2020-10-03");
	}

	@Test
	void aSeasonThatStaysWarmIsOneWithoutAFreeze() {
		DailyRecord record = RecordFixture.constant("2019-08-01", "2021-07-31", 50, Map.of());
		SeasonOutcome spring = FreezeSearch.lastSpring(record, NORTH, 0);
		assertThat(spring.state()).isEqualTo(State.WITHOUT);
		assertThat(FreezeSearch.frostFreeDays(spring, FreezeSearch.firstFall(record, NORTH, 0))).isEmpty();
	}

	@Test
	void aSeasonOutsideTheRecordIsLeftOut() {
		DailyRecord record = RecordFixture.constant("2019-08-01", "2021-07-31", 50, Map.of());
		assertThat(FreezeSearch.lastSpring(record, new Season(1999, Hemisphere.NORTH), 0).state())
			.isEqualTo(State.LEFT_OUT);
	}

	@Test
	void leapDayCountsAsTheDayBefore() {
		DailyRecord record = RecordFixture.constant("2019-08-01", "2021-07-31", 50, Map.of("2020-02-29", -1));
		SeasonOutcome spring = FreezeSearch.lastSpring(record, NORTH, 0);
		assertThat(spring.date()).isEqualTo("2020-02-29");
		assertThat(SeasonDay.of(spring.date(), 2020)).isEqualTo(59);
	}

	/**
	 * A record moved by half a year with its seasons gives dates moved by half a year.
	 * Days are compared over 1 February 2001 to 31 January 2003, in which no leap day
	 * lies.
	 */
	@Test
	void southernSeasonsMirrorNorthernOnes() {
		for (long seed = 1; seed <= 20; seed++) {
			DailyRecord north = RecordFixture.wave(seed, 2000, 2004, 8, false);
			DailyRecord.Builder moved = DailyRecord.builder();
			Season own = new Season(2001, Hemisphere.NORTH);
			Season other = new Season(2001, Hemisphere.SOUTH);
			long shift = other.midsummer().toEpochDay() - own.midsummer().toEpochDay();
			for (long day = own.springSearchStart().toEpochDay(); day <= own.fallSearchEnd().toEpochDay(); day++) {
				moved.set(Element.TMIN, LocalDate.ofEpochDay(day + shift), north.value(Element.TMIN, day));
			}
			DailyRecord south = moved.build();
			SeasonOutcome spring = FreezeSearch.lastSpring(north, own, 0);
			SeasonOutcome fall = FreezeSearch.firstFall(north, own, 0);
			assertThat(spring.state()).isEqualTo(State.DATED);
			assertThat(FreezeSearch.lastSpring(south, other, 0).date()).isEqualTo(spring.date().plusDays(shift));
			assertThat(FreezeSearch.firstFall(south, other, 0).date()).isEqualTo(fall.date().plusDays(shift));
			assertThat(FreezeSearch.lastSpring(south, other, 0).season()).isEqualTo(2001);
		}
	}

	@Test
	void aHigherThresholdNeverShortensTheFreezingTime() {
		for (long seed = 1; seed <= 20; seed++) {
			DailyRecord record = RecordFixture.wave(seed, 2018, 2022, 8, false);
			for (int limit = -50; limit < 50; limit += 10) {
				SeasonOutcome strict = FreezeSearch.lastSpring(record, NORTH, limit);
				SeasonOutcome wide = FreezeSearch.lastSpring(record, NORTH, limit + 10);
				assertThat(wide.date()).isAfterOrEqualTo(strict.date());
				assertThat(FreezeSearch.firstFall(record, NORTH, limit + 10).date())
					.isBeforeOrEqualTo(FreezeSearch.firstFall(record, NORTH, limit).date());
			}
		}
	}

	@Test
	void thePeriodIsTheLatestThirtySeasonsThatAreCovered() {
		DailyRecord record = RecordFixture.wave(1, 1980, 2021, 8, false);
		assertThat(SeasonPeriod.latest(record, Hemisphere.NORTH)).hasValue(new SeasonPeriod(1991, 2020));
		assertThat(SeasonPeriod.latest(record, Hemisphere.SOUTH)).hasValue(new SeasonPeriod(1990, 2019));
		assertThat(SeasonPeriod.latest(RecordFixture.wave(1, 2010, 2013, 8, false), Hemisphere.NORTH))
			.hasValue(new SeasonPeriod(2011, 2012));
		assertThat(SeasonPeriod.latest(DailyRecord.builder().build(), Hemisphere.NORTH)).isEmpty();
	}

}
