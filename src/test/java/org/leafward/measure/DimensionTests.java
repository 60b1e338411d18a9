package org.leafward.measure;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/**
 * Depths: NIST Special Publication 811, appendix B (an inch is 2.54 cm, a foot 30.48 cm).
 * Conductivity: a siemens was once called a mho, so that 1 mmho/cm is 1 mS/cm and 1 dS/m
 * by the prefixes of SI. From memory.
 */
class DimensionTests {

	@ParameterizedTest
	@CsvSource({ "30, 30", "30 cm, 30", "300mm, 30", "0.3 m, 30", "12 in, 30.48", "1 ft., 30.48", "'12\"', 30.48",
			"'2,5 cm', 2.5" })
	void depthsAreCentimetres(String written, double centimetres) {
		assertThat(Dimension.DEPTH.read("depth", written)).isCloseTo(centimetres, within(1e-9));
	}

	@ParameterizedTest
	@CsvSource({ "2.5, 2.5", "2.5 dS/m, 2.5", "2.5 mmhos/cm, 2.5", "2.5 mS/cm, 2.5", "2500 µS/cm, 2.5",
			"2500 μS/cm, 2.5", "2500 uS/cm, 2.5" })
	void conductivitiesAreDecisiemensAMetre(String written, double decisiemens) {
		assertThat(Dimension.CONDUCTIVITY.read("ec", written)).isCloseTo(decisiemens, within(1e-9));
	}

	@Test
	void otherUnitsAreRefused() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Dimension.DEPTH.read("depth", "3 gal"))
			.satisfies((refused) -> assertThat(refused.byField().get("depth")).contains("3 gal", "12 in"));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Dimension.CONDUCTIVITY.read("ec", "-2"));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Dimension.CONDUCTIVITY.read("ec", " "));
	}

}
