package org.leafward.amounts;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.climate.core.water.LandscapeWater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Factors: NIST Special Publication 811, appendix B, from memory. */
class QuantityTests {

	@ParameterizedTest
	@CsvSource({ "0, 0", "1446.3, '1,400'", "145, 150", "9.96, 10", "0.0347, 0.035", "99.5, 100", "6, 6",
			"123456, '120,000'" })
	void figuresHaveTwoPlaces(double value, String words) {
		assertThat(Quantity.figure(value)).isEqualTo(words);
	}

	@Test
	void amountsStandInBothUnits() {
		assertThat(Quantity.litres(3.785411784)).isEqualTo("3.8 litres (1 gal)");
		assertThat(Quantity.kilograms(0.45359237 * 50)).isEqualTo("23 kg (50 lb)");
		assertThat(Quantity.millimetres(25.4)).isEqualTo("25 mm (1 in)");
		assertThat(Quantity.soilDepth(0.3048)).isEqualTo("30 cm (12 in)");
		assertThat(Quantity.area(9.290304)).isEqualTo("9.3 m² (100 sq ft)");
	}

	/**
	 * Unit algebra: 7.48052 gallons in a cubic foot make 0.623 on an inch of a square
	 * foot.
	 */
	@Test
	void anInchOnASquareFootIsTheSameInBothUnits() {
		double litres = Quantity.MILLIMETRES_PER_INCH * Quantity.SQUARE_METRES_PER_SQUARE_FOOT;
		assertThat(litres / Quantity.LITRES_PER_GALLON)
			.isCloseTo(LandscapeWater.GALLONS_PER_INCH_AND_SQUARE_FOOT, within(1e-6))
			.isCloseTo(0.623, within(0.0005));
	}

	@Test
	void figuresStayWithinFivePerCent() {
		Random random = new Random(3);
		for (int i = 0; i < 10_000; i++) {
			double value = Math.pow(10, random.nextDouble() * 10 - 3);
			double read = Double.parseDouble(Quantity.figure(value).replace(",", ""));
			assertThat(read).isCloseTo(value, within(0.0501 * value));
		}
	}

}
