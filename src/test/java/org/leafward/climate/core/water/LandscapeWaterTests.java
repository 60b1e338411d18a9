package org.leafward.climate.core.water;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

class LandscapeWaterTests {

	@Test
	void plantFactorsAreTheTypedOnes() {
		List<String[]> rows = SharedData.table("water/plant-factors.csv");
		assertThat(rows).hasSize(PlantFactor.values().length);
		for (String[] row : rows) {
			PlantFactor factor = PlantFactor.valueOf(row[0]);
			assertThat(factor.value(false)).as("%s, dry", row[0]).isEqualTo(Double.parseDouble(row[1]));
			assertThat(factor.value(true)).as("%s, humid", row[0]).isEqualTo(Double.parseDouble(row[2]));
			assertThat(factor.evidence()).as(row[0]).isEqualTo(switch (row[3]) {
				case "B" -> Evidence.PAGE;
				case "C" -> Evidence.SECOND_HAND;
				case "M" -> Evidence.MEMORY;
				default -> throw new IllegalStateException(row[3]);
			});
		}
	}

	/** Arithmetic: a US gallon is 231 cubic inches, a cubic foot 1728. */
	@Test
	void gallonsAndLitres() {
		assertThat(LandscapeWater.GALLONS_PER_INCH_AND_SQUARE_FOOT).isCloseTo(144 / 231.0, within(1e-6));
		assertThat(LandscapeWater.GALLONS_PER_HUNDRED_CUBIC_FEET).isCloseTo(100 * 1728 / 231.0, within(1e-3));
		assertThat(LandscapeWater.gallons(1.5, 0.5, 100)).isCloseTo(46.753, within(0.001));
		assertThat(LandscapeWater.litres(10, 0.5, 20)).isEqualTo(100);
		double litres = LandscapeWater.litres(25.4, 0.8, 0.09290304);
		assertThat(litres / 3.785411784).as("an inch on a square foot both ways")
			.isCloseTo(LandscapeWater.gallons(1, 0.8, 1), within(1e-6));
		assertThat(LandscapeWater.coefficient(0.5, 1.1, 1.2)).isCloseTo(0.66, within(1e-12));
		assertThatIllegalArgumentException().isThrownBy(() -> LandscapeWater.litres(-1, 0.5, 20));
		assertThatIllegalArgumentException().isThrownBy(() -> LandscapeWater.gallons(1, 3, 20));
	}

}
