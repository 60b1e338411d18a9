package org.leafward.amounts.soiltest;

import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.amounts.Quantity;
import org.leafward.amounts.salt.Conductivity;
import org.leafward.amounts.salt.Drainage;
import org.leafward.amounts.salt.Extract;
import org.leafward.climate.core.water.TextureClass;
import org.leafward.measure.BadInput;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Sources stand in the heads of the tables in {@code shared/salt}. */
class SoilTreatmentTests {

	private static final double SQUARE_METRES_PER_ACRE = 43_560 * Quantity.SQUARE_METRES_PER_SQUARE_FOOT;

	private static final double KILOGRAMS_PER_SHORT_TON = 2000 * Quantity.KILOGRAMS_PER_POUND;

	@Test
	void exchangeableSodiumComesFromTheRatio() {
		for (String[] row : SharedData.table("salt/exchangeable-sodium.csv")) {
			assertThat(Sodium.exchangeable(number(row[0]))).as("SAR %s", row[0])
				.isCloseTo(number(row[1]), within(number(row[2])));
		}
		// A report of the Natural Resources Conservation Service, read.
		assertThat(Sodium.adsorptionRatio(5, 10, 5)).isCloseTo(1.83, within(0.005));
		// FAO Irrigation and Drainage Paper 29, from memory, not found.
		assertThat(Sodium.adsorptionRatio(7.73, 2.32, 1.44)).isCloseTo(5.64, within(0.005));
		for (double ratio = 1; ratio <= 150; ratio += 0.5) {
			assertThat(Sodium.ratio(Sodium.exchangeable(ratio))).isCloseTo(ratio, within(1e-9));
		}
	}

	/**
	 * Class limits of USDA Agriculture Handbook 60 as read on a botany page (saline: EC 4
	 * and more, ESP below 15); what lies on a limit goes to the worse class.
	 */
	@ParameterizedTest
	@CsvSource({ "3.9, 14.9, NORMAL", "4, 14.9, SALINE", "3.9, 15, SODIC", "4, 15, SALINE_SODIC", "0, 0, NORMAL",
			"20, 60, SALINE_SODIC" })
	void soilsHaveTheirClasses(double conductivity, double exchangeable, SoilClass soil) {
		assertThat(SoilClass.of(conductivity, exchangeable)).isEqualTo(soil);
		assertThat(test(7.5, conductivity, exchangeable, 20.0).soilClass()).isEqualTo(soil);
	}

	@Test
	void pureGypsumIsThatOfTheTable() {
		for (String[] row : SharedData.table("salt/gypsum.csv")) {
			assertThat(tonsAnAcre(number(row[0]), 0.3048)).isCloseTo(number(row[1]), within(0.08));
			assertThat(tonsAnAcre(number(row[0]), 0.1524)).isCloseTo(number(row[2]), within(0.08));
		}
	}

	/**
	 * Ali, Practices of Irrigation and On-farm Water Management, example 8.7, read: CEC
	 * 22 meq/100 g, ESP from 35 to 15 in 40 cm: 4.4 meq, 22.58 t/ha, and 28.23 with a
	 * quarter more. It counts with 3.85 t/ha for 1 meq in 30 cm, 1.3 % above the 1.7 tons
	 * on an acre-foot from which it comes.
	 */
	@Test
	void theWorkedExampleComesOut() {
		double sodium = GypsumRequirement.sodium(22, 35, 15);
		assertThat(sodium).isCloseTo(4.4, within(1e-9));
		double pure = GypsumRequirement.pure(sodium, 0.4, GypsumRequirement.USUAL_DENSITY);
		assertThat(10 * pure).isCloseTo(22.58, within(0.015 * 22.58));
		assertThat(10 * GypsumRequirement.spread(pure, 1)).isCloseTo(28.23, within(0.015 * 28.23));
		// Its own rounding left in, the same arithmetic gives its figures.
		double density = 3.85 / (10 * GypsumRequirement.pure(1, 0.3, 1));
		assertThat(10 * GypsumRequirement.pure(sodium, 0.4, density)).isCloseTo(22.58, within(0.01));
		assertThat(10 * GypsumRequirement.spread(GypsumRequirement.pure(sodium, 0.4, density), 1)).isCloseTo(28.23,
				within(0.01));
	}

	/** Oster's equation 8.2, read in a copy: 0.0086 F Ds rho CEC (ESPi - ESPf). */
	@Test
	void theMassBalanceIsTheSame() {
		double oster = 0.0086 * 1.25 * 0.15 * 1.47 * 150 * (25 - 10);
		double ours = GypsumRequirement.spread(
				GypsumRequirement.pure(GypsumRequirement.sodium(15, 25, 10), 0.15, GypsumRequirement.USUAL_DENSITY), 1);
		assertThat(10 * ours).isCloseTo(oster, within(0.002 * oster));
	}

	@Test
	void aSodicSoilGetsGypsumThenWater() {
		SoilTreatment treatment = SoilTreatment.of(test(8.8, 2, 25, 15.0), bed(Drainage.GOOD), 10, 0.9);
		assertThat(treatment.remedy()).isEqualTo(Remedy.GYPSUM);
		assertThat(treatment.leaching()).isNull();
		assertThat(treatment.kilograms()).isCloseTo(5.93, within(0.01));
		assertThat(treatment.applications()).hasSize(1);
		assertThat(treatment.amount().words()).isEqualTo(
				"The soil is sodic. Spread about 5.9 kg (13 lb) of gypsum, " + "and water in with 50 mm (2 in).");
		assertThat(treatment.amount().explanation().toString()).contains("Oster", "Handbook 60", "20 lb on 100 sq ft",
				"from memory");
		SoilTreatment both = SoilTreatment.of(test(8.4, 8, 45, 30.0), bed(Drainage.GOOD), 10, 0.9);
		assertThat(both.applications()).hasSize(3);
		assertThat(both.leaching()).isNotNull();
		assertThat(both.amount().words())
			.startsWith("The soil is saline-sodic. Spread about 28 kg (61 lb) of gypsum "
					+ "in 3 parts of 9.2 kg (20 lb), half a year apart")
			.contains("Then leach with about 1,500 litres");
	}

	@ParameterizedTest
	@CsvSource({ "7.0, 1, 5, GOOD, NONE", "5.0, 1, 5, GOOD, NONE", "7.5, 8, 5, GOOD, LEACH",
			"8.8, 2, 25, NONE, DRAIN_FIRST", "7.5, 8, 5, NONE, DRAIN_FIRST", "5.5, 2, 25, GOOD, LIME",
			"7.0, 1, 5, NONE, NONE" })
	void gypsumDoesNothingAndTheWordsSaySo(double ph, double conductivity, double exchangeable, Drainage drainage,
			Remedy remedy) {
		SoilTreatment treatment = SoilTreatment.of(test(ph, conductivity, exchangeable, 15.0), bed(drainage), 10, 1);
		assertThat(treatment.remedy()).isEqualTo(remedy);
		assertThat(treatment.kilograms()).isZero();
		assertThat(treatment.applications()).isEmpty();
		assertThat(treatment.amount().words()).containsAnyOf("Gypsum does nothing here", "Gypsum is the wrong thing");
	}

	@Test
	void withoutAnExchangeCapacityThereIsNoAmount() {
		SoilTreatment treatment = SoilTreatment.of(test(8.8, 2, 25, null), bed(Drainage.UNTESTED), 10, 1);
		assertThat(treatment.remedy()).isEqualTo(Remedy.MEASURE_EXCHANGE);
		assertThat(treatment.kilograms()).isZero();
		assertThat(treatment.amount().words()).contains("have the laboratory measure the CEC");
	}

	@Test
	void aHighAcidityFigureWithoutSodiumIsDoubted() {
		assertThat(test(9, 1, 5, 15.0).explanation().toString()).contains("measured again");
		assertThat(test(9, 1, 25, 15.0).explanation().toString()).doesNotContain("measured again");
	}

	@Test
	void anythingThatATestCanSayHasAnAnswer() {
		Random random = new Random(7);
		for (int i = 0; i < 3000; i++) {
			double esp = random.nextDouble() * 70;
			double cec = 0.5 + random.nextDouble() * 99;
			double purity = 0.2 + random.nextDouble() * 0.8;
			double wanted = 1 + random.nextDouble() * 13;
			double depth = 0.05 + random.nextDouble() * 0.9;
			Drainage drainage = Drainage.values()[random.nextInt(4)];
			TextureClass soil = TextureClass.values()[random.nextInt(10)];
			SoilTest test = new SoilTest(4 + random.nextDouble() * 6,
					new Conductivity(random.nextDouble() * 100, Extract.values()[random.nextInt(2)], soil), esp, null,
					cec);
			double area = 0.1 + random.nextDouble() * 1000;
			SoilTreatment treatment = SoilTreatment.of(test, new TreatedBed(area, depth, drainage), wanted, purity);
			assertThat(treatment.kilograms()).isNotNegative();
			assertThat(treatment.kilograms() > 0).isEqualTo(treatment.remedy() == Remedy.GYPSUM);
			assertThat(treatment.applications().stream().mapToDouble(Double::doubleValue).sum())
				.isCloseTo(treatment.kilograms(), within(1e-6));
			assertThat(treatment.applications())
				.allSatisfy((one) -> assertThat(one / area).isLessThanOrEqualTo(SoilTreatment.MOST_AT_ONCE + 1e-6));
			assertThat(treatment.amount().words()).hasSizeLessThanOrEqualTo(300);
			if (treatment.remedy() == Remedy.GYPSUM) {
				assertThat(
						SoilTreatment.of(test, new TreatedBed(area * 2, depth, drainage), wanted, purity).kilograms())
					.isCloseTo(2 * treatment.kilograms(), within(1e-6));
				assertThat(SoilTreatment.of(test, new TreatedBed(area, depth + 0.05, drainage), wanted, purity)
					.kilograms()).isGreaterThan(treatment.kilograms());
				assertThat(SoilTreatment.of(test, new TreatedBed(area, depth, drainage), wanted - 0.001, purity)
					.kilograms()).isGreaterThan(treatment.kilograms());
			}
		}
	}

	@Test
	void figuresOutOfBoundsAreRefused() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> test(15, 1, 5, 15.0));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> test(7, 1, 71, 15.0));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> test(7, 1, 5, 0.0));
		assertThatExceptionOfType(BadInput.class).isThrownBy(
				() -> SoilTest.ofRatio(7, new Conductivity(1, Extract.SATURATED_PASTE, TextureClass.LOAM), 900, null))
			.withMessageContaining("SAR");
		for (double purity : new double[] { 0, 1.01, Double.NaN }) {
			assertThatExceptionOfType(BadInput.class)
				.isThrownBy(() -> SoilTreatment.of(test(7, 1, 5, 15.0), bed(Drainage.GOOD), 10, purity));
		}
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> SoilTreatment.of(test(7, 1, 5, 15.0), bed(Drainage.GOOD), 15, 1));
	}

	private static double tonsAnAcre(double sodium, double depth) {
		return GypsumRequirement.pure(sodium, depth, GypsumRequirement.USUAL_DENSITY) * SQUARE_METRES_PER_ACRE
				/ KILOGRAMS_PER_SHORT_TON;
	}

	private static TreatedBed bed(Drainage drainage) {
		return new TreatedBed(10, 0.15, drainage);
	}

	private static SoilTest test(double ph, double conductivity, double exchangeable, @Nullable Double exchange) {
		return new SoilTest(ph, new Conductivity(conductivity, Extract.SATURATED_PASTE, TextureClass.LOAM),
				exchangeable, null, exchange);
	}

	private static double number(String text) {
		return Double.parseDouble(text);
	}

}
