package org.leafward.climate.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.heat.HeatMeasure;
import org.leafward.measure.Hemisphere;

/** Sums in one walk against the search that looks for one sum at a time. */
class HeatSumsTests {

	private static final SeasonPeriod PERIOD = new SeasonPeriod(2001, 2014);

	private static final TemperatureThreshold BASE = TemperatureThreshold.parse("50F");

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8 })
	void answersAsTheSearchDoesOnRecordsWithGaps(long seed) {
		Random random = new Random(seed);
		DailyRecord record = record(random);
		Hemisphere hemisphere = (seed % 2 == 0) ? Hemisphere.NORTH : Hemisphere.SOUTH;
		HeatMeasure measure = HeatMeasure.average(50, true);
		MonthDay start = MonthDay.of(1 + random.nextInt(12), 1 + random.nextInt(28));
		int colderBy = random.nextInt(800) - 400;
		int[] sums = random.ints(150, 1, 9_000).distinct().sorted().toArray();
		HeatSums all = HeatSums.of(record.means(), PERIOD, hemisphere, BASE, start, colderBy / 100.0, sums);
		LastingHeat lasting = new LastingHeat();
		LastingHeat.Count count = new LastingHeat.Count(BASE, start);
		LastingHeat.Place place = new LastingHeat.Place(colderBy, hemisphere, PERIOD);
		LastingHeat.Place colder = new LastingHeat.Place(colderBy + 300, hemisphere, PERIOD);
		int dated = 0;
		int leftOut = 0;
		for (int number = 0; number < 2 * sums.length; number++) {
			int sum = sums[(number * 7) % sums.length];
			HeatGoal goal = new HeatGoal(sum, start);
			Sample one = Sample.ofDates(search(record, hemisphere, measure, goal, colderBy / 100.0));
			assertSame(all.sample(sum), one, sum);
			assertSame(lasting.of(() -> record, count, place, sum), one, sum);
			assertSame(lasting.of(() -> record, count, colder, sum),
					Sample.ofDates(search(record, hemisphere, measure, goal, colderBy / 100.0 + 3)), sum);
			dated += one.used();
			leftOut += one.leftOut();
		}
		assertThat(dated).isPositive();
		assertThat(leftOut).isPositive();
	}

	private static void assertSame(@Nullable Sample sample, Sample expected, int sum) {
		assertThat(sample).as("sum %d", sum).usingRecursiveComparison().isEqualTo(expected);
	}

	@Test
	void aSumThatWasNotLookedForHasNoSample() {
		DailyRecord record = record(new Random(1));
		HeatSums sums = HeatSums.of(record.means(), PERIOD, Hemisphere.NORTH, BASE, MonthDay.of(1, 1), 0,
				new int[] { 100, 300 });
		assertThat(sums.sample(300)).isNotNull();
		assertThat(sums.sample(200)).isNull();
	}

	private static List<SeasonOutcome> search(DailyRecord record, Hemisphere hemisphere, HeatMeasure measure,
			HeatGoal goal, double colderBy) {
		return PERIOD.stream(hemisphere)
			.map((season) -> DegreeDaySearch.reach(record, season, measure, goal, colderBy))
			.toList();
	}

	/** A wave of the year with noise; single days and whole weeks are missing. */
	private static DailyRecord record(Random random) {
		DailyRecord.Builder builder = DailyRecord.builder();
		int hole = 0;
		for (LocalDate day = LocalDate.of(2000, 6, 1); day.getYear() < 2015; day = day.plusDays(1)) {
			hole = (hole > 0) ? hole - 1 : (random.nextInt(600) == 0) ? random.nextInt(9) : 0;
			double mean = 100 - 130 * Math.cos((day.getDayOfYear() - 15) * 2 * Math.PI / 365)
					+ random.nextGaussian() * 40;
			if (hole == 0 && random.nextInt(80) != 0) {
				builder.set(Element.TMIN, day, (int) mean - 50);
			}
			if (hole == 0 && random.nextInt(80) != 0) {
				builder.set(Element.TMAX, day, (int) mean + 50);
			}
		}
		return builder.build();
	}

}
