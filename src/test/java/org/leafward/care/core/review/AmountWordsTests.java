package org.leafward.care.core.review;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.care.AmountUnit;

import static org.assertj.core.api.Assertions.assertThat;

/** NIST SP 811: 1 in = 25.4 mm, 1 gal (US) = 3.785411784 l, 1 lb = 0.45359237 kg. */
class AmountWordsTests {

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			25.4 | MM        | 25.4 mm (1 in)
			1    | INCHES    | 25.4 mm (1 in)
			500  | GALLONS   | 1,893 litres (500 gal)
			10   | LITRES    | 10 litres (2.6 gal)
			2    | POUNDS    | 0.91 kg (2 lb)
			1.25 | KILOGRAMS | 1.25 kg (2.8 lb)
			2    | BAGS      | 2 bags
			0    | MM        | 0 mm (0 in)
			""")
	void amountsAreMetricWithUsUnits(double amount, AmountUnit unit, String words) {
		assertThat(AmountWords.of(amount, unit)).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			125   | 125 mm (4.9 in)
			12.34 | 12.3 mm (0.49 in)
			""")
	void depthsAreRounded(double millimetres, String words) {
		assertThat(AmountWords.depth(millimetres)).isEqualTo(words);
	}

}
