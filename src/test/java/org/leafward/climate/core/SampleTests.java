package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.leafward.measure.SeasonDay;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

class SampleTests {

	/** Source: the table's head. */
	@Test
	void quantilesFollowTheDefinitionOfType7() {
		for (String[] row : SharedData.table("climate/quantile-type7.csv")) {
			double[] values = Arrays.stream(row[0].split(" ")).mapToDouble(Double::parseDouble).sorted().toArray();
			assertThat(Quantiles.type7(values, Double.parseDouble(row[1]) / 100)).as(String.join(",", row))
				.isCloseTo(Double.parseDouble(row[2]), within(1e-9));
		}
	}

	/**
	 * Expected: Python's statistics.quantiles(n=10, method="inclusive") over the same day
	 * numbers, which is the same definition written by others.
	 */
	@Test
	void decilesOfTypedYearlyDatesAgreeWithPython() {
		List<String[]> rows = SharedData.table("climate/central-park-freeze-dates-1995-2019.csv");
		assertThat(rows).hasSize(25);
		assertThat(deciles(Sample.ofDates(outcomes(rows, 1)))).containsExactly(78.6, 82.0, 83.6, 86.6, 88.0, 93.0, 96.8,
				99.0, 99.6);
		assertThat(deciles(Sample.ofDates(outcomes(rows, 2)))).containsExactly(313.0, 313.8, 316.0, 317.6, 322.0, 325.6,
				333.4, 338.6, 343.6);
		Sample length = new Sample(rows.stream().mapToDouble((row) -> Double.parseDouble(row[3])).toArray(), 0, 0);
		assertThat(deciles(length)).containsExactly(215.4, 216.0, 223.2, 229.4, 233.0, 234.8, 245.2, 255.2, 257.6);
	}

	@Test
	void typedLengthsAreTheDaysBetweenTheTypedDates() {
		List<String[]> rows = SharedData.table("climate/central-park-freeze-dates-1995-2019.csv");
		List<SeasonOutcome> springs = outcomes(rows, 1);
		List<SeasonOutcome> falls = outcomes(rows, 2);
		for (int at = 0; at < rows.size(); at++) {
			assertThat(FreezeSearch.frostFreeDays(springs.get(at), falls.get(at)))
				.hasValue(Integer.parseInt(rows.get(at)[3]));
		}
	}

	@Test
	void quantilesNeverFallWithTheProbability() {
		Random random = new Random(20260101);
		for (int round = 0; round < 200; round++) {
			double[] values = random.doubles(10 + random.nextInt(60), -50, 400).toArray();
			Sample sample = new Sample(values, 0, 0);
			for (int percent = 1; percent <= 100; percent++) {
				assertThat(sample.quantile(percent)).isGreaterThanOrEqualTo(sample.quantile(percent - 1) - 1e-9);
			}
			assertThat(sample.quantile(0)).isEqualTo(Arrays.stream(values).min().getAsDouble());
			assertThat(sample.quantile(100)).isEqualTo(Arrays.stream(values).max().getAsDouble());
		}
	}

	@Test
	void fewerThanTenSeasonsAreNoSample() {
		assertThat(new Sample(new double[9], 0, 20).undefined())
			.hasValueSatisfying((reason) -> assertThat(reason).contains("only 9 seasons"));
		assertThat(new Sample(new double[9], 1, 0).undefined()).isEmpty();
		assertThatThrownBy(() -> new Sample(new double[9], 0, 0).quantile(50))
			.isInstanceOf(IllegalStateException.class);
	}

	/**
	 * NCEI, Supplemental Normals: the probability of occurrence must be at least 10 %.
	 */
	@Test
	void anEventRarerThanOneSeasonInTenHasNoProbability() {
		assertThat(new Sample(new double[2], 28, 0).undefined())
			.hasValueSatisfying((reason) -> assertThat(reason).contains("2 of 30"));
		assertThat(new Sample(new double[3], 27, 0).undefined()).isEmpty();
	}

	private static double[] deciles(Sample sample) {
		return Arrays.stream(new int[] { 10, 20, 30, 40, 50, 60, 70, 80, 90 })
			.mapToDouble((percent) -> Math.round(sample.quantile(percent) * 1e6) / 1e6)
			.toArray();
	}

	private static List<SeasonOutcome> outcomes(List<String[]> rows, int column) {
		return rows.stream()
			.map((row) -> SeasonOutcome.dated(Integer.parseInt(row[0]), LocalDate.parse(row[column]).toEpochDay(), 0))
			.peek((outcome) -> assertThat(SeasonDay.of(outcome.date(), outcome.season())).isPositive())
			.toList();
	}

}
