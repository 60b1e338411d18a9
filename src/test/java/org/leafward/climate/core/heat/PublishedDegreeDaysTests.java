package org.leafward.climate.core.heat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Degree-days against the tables in shared/heat, which name their sources. */
class PublishedDegreeDaysTests {

	/** Half a unit of the last printed decimal, and a little for its own rounding. */
	private static final double PRINTED = 0.00501;

	private static final HeatThresholds HORIZONTAL = new HeatThresholds(50, 70, CutOff.HORIZONTAL);

	private static final HeatThresholds VERTICAL = new HeatThresholds(50, 70, CutOff.VERTICAL);

	private static final HeatThresholds INTERMEDIATE = new HeatThresholds(50, 70, CutOff.INTERMEDIATE);

	@Test
	void daysOfAllSixCases() {
		List<String[]> rows = SharedData.table("heat/uc-reference-days.csv");
		assertThat(rows).hasSize(32);
		for (String[] row : rows) {
			check(row, 5, DegreeDays.SINGLE_SINE, HORIZONTAL);
			check(row, 6, DegreeDays.SINGLE_SINE, VERTICAL);
			check(row, 7, DegreeDays.SINGLE_SINE, INTERMEDIATE);
			check(row, 8, DegreeDays.SINGLE_TRIANGLE, HORIZONTAL);
			check(row, 9, DegreeDays.SINGLE_TRIANGLE, VERTICAL);
			check(row, 10, DegreeDays.SINGLE_TRIANGLE, INTERMEDIATE);
			check(row, 11, DegreeDays.DOUBLE_SINE, HORIZONTAL);
			check(row, 12, DegreeDays.DOUBLE_TRIANGLE, HORIZONTAL);
		}
	}

	private static void check(String[] row, int column, DegreeDays method, HeatThresholds thresholds) {
		assertThat(method.of(number(row[2]), number(row[3]), number(row[4]), thresholds))
			.as("%s %s on %s", method, thresholds.cutOff(), row[1])
			.isCloseTo(number(row[column]), within(PRINTED));
	}

	/**
	 * UC IPM Online calculator for Esparto-A, 2020: with the intermediate cut-off it goes
	 * its own way on a few hot days, by a rule that was not found. These are NOT
	 * reproduced. Printed are 4.27, 2.72 by single sine and 4.27, 3.41, 3.68 by double
	 * sine, where the formula gives less.
	 */
	@Test
	void hotDaysThatAreNotReproduced() {
		double july = DegreeDays.SINGLE_SINE.of(59, 103, 59, INTERMEDIATE);
		double august = DegreeDays.SINGLE_SINE.of(68, 107, 60, INTERMEDIATE);
		double september = DegreeDays.DOUBLE_SINE.of(67, 105, 58, INTERMEDIATE);
		assertThat(july).isCloseTo(4.204, within(0.0005));
		assertThat(august).isCloseTo(2.114, within(0.0005));
		assertThat(september).isCloseTo(3.244, within(0.0005));
		assertThat(4.27 - july + 2.72 - august).isCloseTo(0.67, within(0.01));
		double doubles = 4.27 - DegreeDays.DOUBLE_SINE.of(59, 103, 59, INTERMEDIATE) + 3.41
				- DegreeDays.DOUBLE_SINE.of(68, 107, 60, INTERMEDIATE) + 3.68 - september;
		assertThat(doubles).isCloseTo(1.61, within(0.01));
	}

	@Test
	void singleDaysOfOtherSources() {
		List<String[]> rows = SharedData.table("heat/single-days.csv");
		assertThat(rows).hasSize(21);
		for (String[] row : rows) {
			HeatThresholds thresholds = row[5].isEmpty() ? HeatThresholds.above(number(row[4]))
					: new HeatThresholds(number(row[4]), number(row[5]), CutOff.HORIZONTAL);
			assertThat(DegreeDays.valueOf(row[0]).of(number(row[2]), number(row[3]), Double.NaN, thresholds))
				.as(String.join(",", row))
				.isCloseTo(number(row[6]), within(number(row[7]) * 1.002));
		}
	}

	/** Waushara Argus: the three days of the table add up to 43. */
	@Test
	void cornUnitsAddUp() {
		double sum = HeatMeasure.CORN.degreeDays(celsius(65), celsius(90), Double.NaN)
				+ HeatMeasure.CORN.degreeDays(celsius(46), celsius(72), Double.NaN)
				+ HeatMeasure.CORN.degreeDays(celsius(42), celsius(63), Double.NaN);
		assertThat(sum).isCloseTo(43, within(1e-9));
	}

	private static double celsius(double fahrenheit) {
		return (fahrenheit - 32) / 1.8;
	}

	private static double number(String text) {
		return Double.parseDouble(text);
	}

}
