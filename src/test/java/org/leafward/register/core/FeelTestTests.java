package org.leafward.register.core;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.register.SoilTexture;
import org.leafward.register.core.FeelTest.Found;
import org.leafward.register.core.FeelTest.Ribbon;
import org.leafward.register.core.FeelTest.Rubbed;

import static org.assertj.core.api.Assertions.assertThat;

class FeelTestTests {

	/**
	 * The ends of all branches of the diagram of Thien (1979), Journal of Agronomic
	 * Education 8, 54–55: ribbon by row; gritty, smooth, neither by column.
	 */
	@ParameterizedTest
	@CsvSource({ "NONE, loamy sand, loamy sand, loamy sand", "SHORT, sandy loam, silt loam, loam",
			"MEDIUM, sandy clay loam, silty clay loam, clay loam", "LONG, sandy clay, silty clay, clay" })
	void theDiagramIsFollowed(Ribbon ribbon, String gritty, String smooth, String neither) {
		assertThat(FeelTest.ball(ribbon, Rubbed.GRITTY).words()).isEqualTo(gritty);
		assertThat(FeelTest.ball(ribbon, Rubbed.SMOOTH).words()).isEqualTo(smooth);
		assertThat(FeelTest.ball(ribbon, Rubbed.NEITHER).words()).isEqualTo(neither);
	}

	@Test
	void whatMakesNoBallIsSand() {
		assertThat(FeelTest.noBall()).isEqualTo(Found.SAND);
	}

	/**
	 * Silt is the one class of the triangle that no feel test tells from silt loam; it is
	 * no end of the diagram either.
	 */
	@Test
	void allClassesOfTheTriangleButSiltAreEnds() {
		assertThat(Arrays.stream(Found.values()).map(Found::words).collect(Collectors.toSet())).hasSize(11)
			.doesNotContain("silt");
	}

	@Test
	void whatTheRegisterKnowsIsKeptAsItIs() {
		for (SoilTexture texture : SoilTexture.values()) {
			assertThat(Found.valueOf(texture.name()).kept()).isEqualTo(texture);
		}
	}

}
