package org.leafward.climate.core.drought;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

class PrecipitationIndexTests {

	/** The table's head names the source. */
	@Test
	void gammaWithHalvesIsChiSquare() {
		List<String[]> rows = SharedData.table("drought/chi-square.csv");
		assertThat(rows).hasSize(12);
		for (String[] row : rows) {
			GammaFit fit = new GammaFit(Double.parseDouble(row[0]) / 2, 2);
			double value = Double.parseDouble(row[2]);
			double half = 0.5 * Math.pow(10, -(row[2].length() - row[2].indexOf('.') - 1));
			double below = 1 - Double.parseDouble(row[1]);
			assertThat(below).as(String.join(",", row))
				.isBetween(fit.cumulative(value - half) - 1e-9, fit.cumulative(value + half) + 1e-9);
		}
	}

	/**
	 * Kumar, Murthy, Sesha Sai and Roy 2009, Meteorological Applications 16:381-389, as
	 * quoted by readers who worked their table again: mean 61.981 and U 0.2846 give scale
	 * 32.4544; mean 61.974 and U 0.2848 give 32.4618. The four printed digits of U leave
	 * 0.02 % of it open, and so 0.007 in the scale.
	 */
	@ParameterizedTest
	@CsvSource({ "61.981,0.2846,32.4544", "61.974,0.2848,32.4618" })
	void scaleAgreesWithAPublishedExample(double mean, double difference, double scale) {
		assertThat(GammaFit.of(mean, difference).scale()).isCloseTo(scale, within(0.007));
	}

	/**
	 * Cumulative probability and index as a printed table of the classes has them
	 * (Journal of Earth Science and Climatic Change 6:319, table 1).
	 */
	@ParameterizedTest
	@CsvSource({ "0.0014,-3.0", "0.0062,-2.5", "0.0228,-2.0", "0.0668,-1.5", "0.1587,-1.0", "0.3085,-0.5", "0.5,0",
			"0.6915,0.5", "0.8413,1.0", "0.9332,1.5", "0.9772,2.0", "0.9938,2.5", "0.9986,3.0" })
	void probabilitiesBecomeNormalDeviates(double probability, double index) {
		assertThat(PrecipitationIndex.standard(probability)).isCloseTo(index, within(0.015));
	}

	@ParameterizedTest
	@CsvSource({ "-0.44,", "-0.46,D0", "-0.74,D0", "-0.76,D1", "-1.24,D1", "-1.26,D2", "-1.5,D2", "-1.6,D3", "-1.94,D3",
			"-1.96,D4", "-3,D4", "0,", "3," })
	void classesFollowThePublishedRanges(double index, String drought) {
		assertThat(DroughtClass.of(index).map(Enum::name)).isEqualTo(Optional.ofNullable(drought));
	}

	/** By hand: of 40 years 10 are dry, so no rain has the deviate of a quarter. */
	@Test
	void yearsWithoutRainCountByTheirShare() {
		double[] sums = new double[40];
		for (int year = 10; year < 40; year++) {
			sums[year] = 20 + year;
		}
		PrecipitationIndex index = PrecipitationIndex.of(sums).orElseThrow();
		assertThat(index.dry()).isEqualTo(0.25);
		assertThat(index.of(0)).isCloseTo(-0.6745, within(0.0001));
		assertThat(index.probability(1e6)).isCloseTo(1, within(1e-12));
		assertThat(index.of(1e6)).isEqualTo(3);
	}

	@Test
	void wherePracticallyNoYearHasRainThereIsNoIndex() {
		double[] sums = new double[40];
		sums[3] = 12;
		assertThat(PrecipitationIndex.of(sums)).isEmpty();
		assertThat(PrecipitationIndex.of(new double[] { 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5 })).isEmpty();
	}

	/** Sums drawn from a gamma distribution of shape 4 come back with that shape. */
	@Test
	void theFitFindsWhatTheSumsWereDrawnFrom() {
		Random random = new Random(3);
		double[] sums = new double[20_000];
		for (int draw = 0; draw < sums.length; draw++) {
			for (int part = 0; part < 4; part++) {
				sums[draw] -= 30 * Math.log(1 - random.nextDouble());
			}
		}
		GammaFit fit = GammaFit.of(sums).orElseThrow();
		assertThat(fit.shape()).isCloseTo(4, within(0.1));
		assertThat(fit.scale()).isCloseTo(30, within(0.8));
	}

}
