package org.leafward.measure;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/** Numbers and dates in words, against the formatters of the JDK. */
class WordsTests {

	private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

	@Test
	void numbersAreWhatTheFormatterMakes() {
		Random random = new Random(11);
		for (int turn = 0; turn < 20_000; turn++) {
			same((random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(8)));
			same(random.nextInt(4000) / 8.0 - 200);
			same((random.nextInt(40_000) - 20_000) / 1000.0);
		}
		for (double value : new double[] { 0, -0.0, 0.5, 1.5, 2.5, 0.05, 0.25, 1.005, -0.04, -0.004, 0.994999999999,
				0.999, 99.995, 9.95, 1e9, 1e15, 1e300, Double.NaN, Double.POSITIVE_INFINITY,
				Double.NEGATIVE_INFINITY }) {
			same(value);
		}
	}

	private static void same(double value) {
		for (int decimals = 0; decimals <= 2; decimals++) {
			assertThat(NumberWords.fixed(value, decimals)).as("%s with %d decimals", value, decimals)
				.isEqualTo(String.format(Locale.ROOT, "%." + decimals + "f", value));
		}
	}

	@Test
	void datesAreWhatTheFormatterMakes() {
		for (LocalDate day = LocalDate.of(2023, 12, 1); day.getYear() < 2026; day = day.plusDays(1)) {
			assertThat(DayWords.of(day)).isEqualTo(FULL.format(day));
		}
		assertThat(DayWords.of(LocalDate.of(1700, 1, 1))).isEqualTo("Fri 1 Jan 1700");
	}

}
