package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.SeasonOutcome.State;
import org.leafward.climate.core.heat.DegreeDays;
import org.leafward.climate.core.heat.HeatMeasure;
import org.leafward.climate.core.heat.HeatThresholds;
import org.leafward.measure.BadInput;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

class DegreeDaySearchTests {

	private static final Season NORTH = new Season(2020, Hemisphere.NORTH);

	private static final HeatMeasure BASE_50F = HeatMeasure.average(50, true);

	/** By hand: 15 °C is 59 °F, so 9 degree-days a day; the 23rd day has 207. */
	@Test
	void theSumIsReachedOnTheDayThatFillsIt() {
		DailyRecord record = even("2020-01-01", "2021-02-28", 150, Set.of());
		assertThat(reach(record, NORTH, BASE_50F, HeatGoal.of(200)).date()).isEqualTo("2020-03-23");
		assertThat(reach(record, NORTH, BASE_50F, HeatGoal.of(207)).date()).isEqualTo("2020-03-23");
		assertThat(reach(record, NORTH, BASE_50F, HeatGoal.of(208)).date()).isEqualTo("2020-03-24");
		assertThat(reach(record, NORTH, HeatMeasure.average(10, false), HeatGoal.of(115)).date())
			.isEqualTo("2020-03-23");
		assertThat(reach(record, NORTH, BASE_50F, new HeatGoal(200, MonthDay.of(2, 15))).date())
			.as("15 days of February, for 2020 is a leap year")
			.isEqualTo("2020-03-08");
		assertThat(reach(record, NORTH, BASE_50F, HeatGoal.of(9 * 365)).date()).isEqualTo("2021-02-28");
		assertThat(reach(record, NORTH, BASE_50F, HeatGoal.of(9 * 365 + 1)).state()).isEqualTo(State.WITHOUT);
	}

	/** By hand: 1.5 °C colder leaves 6.3 degree-days a day; 200 come on the 32nd. */
	@Test
	void aColderPlaceIsLater() {
		DailyRecord record = even("2020-01-01", "2021-02-28", 150, Set.of());
		assertThat(DegreeDaySearch.reach(record, NORTH, BASE_50F, HeatGoal.of(200), 1.5).date())
			.isEqualTo("2020-04-01");
	}

	@Test
	void gapsOfFiveDaysAreBridgedAndLongerOnesLeaveTheSeasonOut() {
		SeasonOutcome bridged = reach(even("2020-01-01", "2021-02-28", 150, days("2020-03-05", 5)), NORTH, BASE_50F,
				HeatGoal.of(200));
		assertThat(bridged.date()).isEqualTo("2020-03-23");
		assertThat(bridged.missing()).isEqualTo(5);
		assertThat(
				reach(even("2020-01-01", "2021-02-28", 150, days("2020-03-05", 6)), NORTH, BASE_50F, HeatGoal.of(200))
					.state())
			.isEqualTo(State.LEFT_OUT);
		Set<LocalDate> ten = days("2020-03-03", 5);
		ten.addAll(days("2020-03-10", 5));
		assertThat(reach(even("2020-01-01", "2021-02-28", 150, ten), NORTH, BASE_50F, HeatGoal.of(200)).date())
			.isEqualTo("2020-03-23");
		ten.add(LocalDate.of(2020, 3, 18));
		assertThat(reach(even("2020-01-01", "2021-02-28", 150, ten), NORTH, BASE_50F, HeatGoal.of(200)).state())
			.isEqualTo(State.LEFT_OUT);
		assertThat(reach(even("2020-01-01", "2020-03-20", 150, Set.of()), NORTH, BASE_50F, HeatGoal.of(200)).state())
			.as("the record ends before")
			.isEqualTo(State.LEFT_OUT);
	}

	/** By hand: the mean of 0 and 20 °C is 10 °C. */
	@Test
	void aGapIsBridgedByTheMeanOfItsNeighbours() {
		DailyRecord.Builder builder = DailyRecord.builder();
		builder.set(Element.TMIN, LocalDate.of(2020, 5, 1), 0);
		builder.set(Element.TMIN, LocalDate.of(2020, 5, 4), 200);
		DailyRecord record = builder.build();
		long day = LocalDate.of(2020, 5, 1).toEpochDay();
		assertThat(Gaps.bridged(record, Element.TMIN, day + 1)).isEqualTo(100);
		assertThat(Gaps.bridged(record, Element.TMIN, day + 2)).isEqualTo(100);
		assertThat(Gaps.bridged(record, Element.TMIN, day + 3)).isEqualTo(200);
		assertThat(Gaps.bridged(record, Element.TMIN, day + 4)).isNaN();
		assertThat(Gaps.bridged(record, Element.TMIN, day - 1)).isNaN();
		assertThat(Gaps.bridged(record, Element.TMAX, day + 1)).isNaN();
	}

	@Test
	void moreHeatIsNeverEarlierNorAHigherBase() {
		Random random = new Random(21);
		for (int round = 0; round < 25; round++) {
			DailyRecord record = RecordFixture.wave(round, 2019, 2021, random.nextDouble() * 12, false);
			LocalDate before = LocalDate.MIN;
			for (int sum = 50; sum <= 3_000; sum += 250) {
				SeasonOutcome outcome = reach(record, NORTH, BASE_50F, HeatGoal.of(sum));
				LocalDate date = (outcome.date() != null) ? outcome.date() : LocalDate.MAX;
				assertThat(date).isAfterOrEqualTo(before);
				SeasonOutcome higher = reach(record, NORTH, HeatMeasure.average(55, true), HeatGoal.of(sum));
				assertThat((higher.date() != null) ? higher.date() : LocalDate.MAX).isAfterOrEqualTo(date);
				before = date;
			}
		}
	}

	/** The same weather later by the 184 days from 1 March to 1 September. */
	@Test
	void theSouthCountsFromSeptember() {
		DailyRecord north = RecordFixture.wave(31, 2019, 2021, 9, false);
		DailyRecord.Builder shifted = DailyRecord.builder();
		long shift = LocalDate.of(2020, 9, 1).toEpochDay() - LocalDate.of(2020, 3, 1).toEpochDay();
		for (LocalDate day = LocalDate.of(2019, 1, 1); day.getYear() < 2022; day = day.plusDays(1)) {
			shifted.set(Element.TMIN, day.plusDays(shift), north.value(Element.TMIN, day));
			shifted.set(Element.TMAX, day.plusDays(shift), north.value(Element.TMAX, day));
		}
		DailyRecord south = shifted.build();
		for (int sum = 100; sum <= 2_000; sum += 100) {
			LocalDate own = reach(north, NORTH, BASE_50F, HeatGoal.of(sum)).date();
			assertThat(reach(south, new Season(2020, Hemisphere.SOUTH), BASE_50F, HeatGoal.of(sum)).date())
				.isEqualTo(own.plusDays(shift));
		}
	}

	/** The double methods look at the next day, across the end of February as well. */
	@Test
	void doubleMethodsTakeTheNextMinimum() {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.of(2020, 2, 1); day.isBefore(LocalDate.of(2020, 3, 10)); day = day.plusDays(1)) {
			builder.set(Element.TMIN, day, day.equals(LocalDate.of(2020, 3, 1)) ? 0 : 100);
			builder.set(Element.TMAX, day, 200);
		}
		HeatMeasure measure = new HeatMeasure(DegreeDays.DOUBLE_TRIANGLE, HeatThresholds.above(10), false);
		DailyRecord record = builder.build();
		// Half a day from 10 to 20 °C gives 2.5, half a day down to 0 °C gives 1.25.
		assertThat(DegreeDaySearch.daily(record, measure, 0).applyAsDouble(LocalDate.of(2020, 2, 28).toEpochDay()))
			.isEqualTo(5);
		assertThat(DegreeDaySearch.daily(record, measure, 0).applyAsDouble(LocalDate.of(2020, 2, 29).toEpochDay()))
			.isEqualTo(3.75);
		assertThat(DegreeDaySearch.daily(record, measure, 0).applyAsDouble(LocalDate.of(2020, 3, 9).toEpochDay()))
			.isNaN();
	}

	/** A record of real days: the dates of a sum spread over weeks, not months. */
	@Test
	void longTermDatesOfARealStation() {
		Sample sample = DegreeDaySearch.sample(RecordFixture.real(RecordFixture.CENTRAL_PARK),
				new SeasonPeriod(1981, 2010), Hemisphere.NORTH, BASE_50F, HeatGoal.of(200), 0);
		assertThat(sample.used()).isEqualTo(30);
		LocalDate early = SeasonDay.toDate(sample.quantile(10), 2001);
		LocalDate middle = SeasonDay.toDate(sample.quantile(50), 2001);
		LocalDate late = SeasonDay.toDate(sample.quantile(90), 2001);
		assertThat(early).isBefore(middle);
		assertThat(middle).isBetween(LocalDate.of(2001, 4, 15), LocalDate.of(2001, 5, 15)).isBefore(late);
	}

	@Test
	void keysSayWhatIsMissingAndReadAsUniqueNames() {
		TemperatureThreshold base = TemperatureThreshold.parse("50F");
		assertThat(new MarkerKey(MarkerKind.DEGREE_DAYS, base, 50, HeatGoal.of(200)).code())
			.isEqualTo("degree-days 50F 200 p50");
		assertThat(new MarkerKey(MarkerKind.DEGREE_DAYS, base, 50, new HeatGoal(200, MonthDay.of(1, 1))).code())
			.isEqualTo("degree-days 50F 200 from 01-01 p50");
		assertThatThrownBy(() -> new MarkerKey(MarkerKind.DEGREE_DAYS, base, 50)).isInstanceOf(BadInput.class)
			.hasMessageContaining("needs a sum");
		assertThatThrownBy(() -> new MarkerKey(MarkerKind.SOIL_WARMS_TO, base, 50, HeatGoal.of(200)))
			.isInstanceOf(BadInput.class)
			.hasMessageContaining("takes no sum");
		assertThatThrownBy(() -> HeatGoal.of(0)).isInstanceOf(BadInput.class);
		assertThatThrownBy(() -> new HeatGoal(10, MonthDay.of(2, 29))).isInstanceOf(BadInput.class);
	}

	private static SeasonOutcome reach(DailyRecord record, Season season, HeatMeasure measure, HeatGoal goal) {
		return DegreeDaySearch.reach(record, season, measure, goal, 0);
	}

	private static Set<LocalDate> days(String first, int count) {
		Set<LocalDate> days = new TreeSet<>();
		for (int at = 0; at < count; at++) {
			days.add(LocalDate.parse(first).plusDays(at));
		}
		return days;
	}

	private static DailyRecord even(String from, String to, int mean, Set<LocalDate> missing) {
		DailyRecord.Builder builder = DailyRecord.builder();
		for (LocalDate day = LocalDate.parse(from); !day.isAfter(LocalDate.parse(to)); day = day.plusDays(1)) {
			if (!missing.contains(day)) {
				builder.set(Element.TMIN, day, mean - 50);
				builder.set(Element.TMAX, day, mean + 50);
			}
		}
		return builder.build();
	}

}
