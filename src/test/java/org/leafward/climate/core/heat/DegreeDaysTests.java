package org.leafward.climate.core.heat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

/** Properties of degree-days on made-up days, always the same ones. */
class DegreeDaysTests {

	private static final int ROUNDS = 3_000;

	@ParameterizedTest
	@EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "CORN_86_50")
	void aHigherThresholdNeverGivesMore(DegreeDays method) {
		Random random = new Random(1);
		for (int round = 0; round < ROUNDS; round++) {
			double[] day = day(random);
			double threshold = random.nextDouble() * 120 - 30;
			double more = method.of(day[0], day[1], day[2], HeatThresholds.above(threshold));
			double less = method.of(day[0], day[1], day[2], HeatThresholds.above(threshold + random.nextDouble() * 20));
			assertThat(more).isGreaterThanOrEqualTo(less - 1e-9);
			assertThat(less).isNotNegative();
			assertThat(more - less).as("a degree of threshold is a degree-day at most").isLessThanOrEqualTo(20);
		}
	}

	@ParameterizedTest
	@EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "CORN_86_50")
	void cutOffsTakeOffMoreAndMore(DegreeDays method) {
		Random random = new Random(2);
		for (int round = 0; round < ROUNDS; round++) {
			double[] day = day(random);
			double lower = random.nextDouble() * 60;
			double upper = lower + 1 + random.nextDouble() * 40;
			double none = method.of(day[0], day[1], day[2], HeatThresholds.above(lower));
			double horizontal = of(method, day, lower, upper, CutOff.HORIZONTAL);
			double intermediate = of(method, day, lower, upper, CutOff.INTERMEDIATE);
			double vertical = of(method, day, lower, upper, CutOff.VERTICAL);
			assertThat(horizontal).isBetween(0.0, none + 1e-9).isLessThanOrEqualTo(upper - lower + 1e-9);
			assertThat(intermediate).isBetween(0.0, horizontal + 1e-9);
			assertThat(vertical).isBetween(0.0, horizontal + 1e-9);
			if (Math.max(day[1], Math.max(day[0], day[2])) <= upper) {
				assertThat(horizontal).isCloseTo(none, within(1e-9));
				assertThat(vertical).isCloseTo(none, within(1e-9));
				assertThat(intermediate).isCloseTo(none, within(1e-9));
			}
		}
	}

	/** The mean of a sine or a line above a threshold, by adding up 20,000 moments. */
	@Test
	void formulasAgreeWithAddingUpTheWave() {
		Random random = new Random(3);
		for (int round = 0; round < 60; round++) {
			double low = random.nextDouble() * 40 - 10;
			double high = low + 1 + random.nextDouble() * 30;
			HeatThresholds thresholds = new HeatThresholds(low + 3, low + 12, CutOff.HORIZONTAL);
			double sine = 0;
			double line = 0;
			int moments = 20_000;
			for (int moment = 0; moment < moments; moment++) {
				double part = (moment + 0.5) / moments;
				sine += counted((low + high) / 2 + (high - low) / 2 * Math.sin(2 * Math.PI * part), thresholds);
				line += counted(high - (high - low) * Math.abs(1 - 2 * part), thresholds);
			}
			assertThat(DegreeDays.SINGLE_SINE.of(low, high, low, thresholds)).isCloseTo(sine / moments, within(0.001));
			assertThat(DegreeDays.SINGLE_TRIANGLE.of(low, high, low, thresholds)).isCloseTo(line / moments,
					within(0.001));
		}
	}

	private static double counted(double temperature, HeatThresholds thresholds) {
		return Math.max(0, Math.min(temperature, thresholds.upper()) - thresholds.lower());
	}

	@Test
	void doubleMethodsEqualSingleOnesWhenTheNextMinimumIsTheSame() {
		Random random = new Random(4);
		for (int round = 0; round < ROUNDS; round++) {
			double[] day = day(random);
			for (CutOff cutOff : new CutOff[] { CutOff.HORIZONTAL, CutOff.INTERMEDIATE, CutOff.VERTICAL }) {
				day[2] = day[0];
				assertThat(of(DegreeDays.DOUBLE_SINE, day, 50, 70, cutOff))
					.isCloseTo(of(DegreeDays.SINGLE_SINE, day, 50, 70, cutOff), within(1e-9));
				assertThat(of(DegreeDays.DOUBLE_TRIANGLE, day, 50, 70, cutOff))
					.isCloseTo(of(DegreeDays.SINGLE_TRIANGLE, day, 50, 70, cutOff), within(1e-9));
			}
		}
	}

	/** A degree-day in °C is 1.8 in °F. */
	@ParameterizedTest
	@EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "CORN_86_50")
	void unitsAgree(DegreeDays method) {
		Random random = new Random(5);
		HeatMeasure celsius = new HeatMeasure(method, new HeatThresholds(10, 30, CutOff.HORIZONTAL), false);
		HeatMeasure fahrenheit = new HeatMeasure(method, new HeatThresholds(50, 86, CutOff.HORIZONTAL), true);
		for (int round = 0; round < ROUNDS; round++) {
			double[] day = day(random);
			double own = celsius.degreeDays(day[0] / 2, day[1] / 2, day[2] / 2);
			assertThat(fahrenheit.degreeDays(day[0] / 2, day[1] / 2, day[2] / 2)).isCloseTo(own * 1.8, within(1e-9));
		}
	}

	@Test
	void cornUnitsStayBetween0And36() {
		Random random = new Random(6);
		for (int round = 0; round < ROUNDS; round++) {
			double[] day = day(random);
			assertThat(DegreeDays.CORN_86_50.of(day[0], day[1], day[2], HeatThresholds.CORN)).isBetween(0.0, 36.0);
		}
		assertThatIllegalArgumentException()
			.isThrownBy(() -> DegreeDays.CORN_86_50.of(50, 60, 50, HeatThresholds.above(50)));
		assertThatIllegalArgumentException()
			.isThrownBy(() -> new HeatMeasure(DegreeDays.CORN_86_50, HeatThresholds.CORN, false));
	}

	@ParameterizedTest
	@EnumSource(DegreeDays.class)
	void aMissingTemperatureIsNotTakenForHeat(DegreeDays method) {
		for (CutOff cutOff : new CutOff[] { CutOff.HORIZONTAL, CutOff.VERTICAL, CutOff.INTERMEDIATE }) {
			if (method != DegreeDays.CORN_86_50 || cutOff == CutOff.HORIZONTAL) {
				HeatThresholds thresholds = new HeatThresholds(50, 86, cutOff);
				assertThat(method.of(Double.NaN, 60, 40, thresholds)).isNaN();
				assertThat(method.of(40, Double.NaN, 40, thresholds)).isNaN();
				assertThat(Double.isNaN(method.of(40, 60, Double.NaN, thresholds))).isEqualTo(method.needsNextLow());
			}
		}
	}

	/** Some records have them: the day then counts as even. */
	@Test
	void aMaximumBelowTheMinimumCountsAsTheMinimum() {
		assertThat(DegreeDays.SINGLE_SINE.of(60, 55, 60, HeatThresholds.above(50))).isEqualTo(10);
		assertThat(DegreeDays.DOUBLE_TRIANGLE.of(60, 55, 40, HeatThresholds.above(50)))
			.isCloseTo(10 / 2.0 + 5 * 5 / (2.0 * 15) / 2, within(1e-9));
	}

	@Test
	void thresholdsMustStandInOrder() {
		assertThatIllegalArgumentException().isThrownBy(() -> new HeatThresholds(50, 50, CutOff.HORIZONTAL));
		assertThatIllegalArgumentException().isThrownBy(() -> new HeatThresholds(50, 70, CutOff.NONE));
		assertThatIllegalArgumentException()
			.isThrownBy(() -> new HeatThresholds(50, Double.POSITIVE_INFINITY, CutOff.VERTICAL));
		assertThatIllegalArgumentException().isThrownBy(() -> HeatThresholds.above(Double.NaN));
	}

	private static double of(DegreeDays method, double[] day, double lower, double upper, CutOff cutOff) {
		return method.of(day[0], day[1], day[2], new HeatThresholds(lower, upper, cutOff));
	}

	private static double[] day(Random random) {
		double low = random.nextDouble() * 100 - 20;
		double high = low + random.nextDouble() * 40;
		return new double[] { low, high, Math.min(high, low + random.nextDouble() * 20 - 10) };
	}

}
