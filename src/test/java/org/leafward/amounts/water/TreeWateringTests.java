package org.leafward.amounts.water;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.amounts.Quantity;
import org.leafward.measure.BadInput;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Against published figures for trees and pots; sources beside each. */
class TreeWateringTests {

	private static final double INCH = 25.4;

	private static final double GALLON = 3.785411784;

	/** University of Minnesota Extension; the source is in the head of the table. */
	@Test
	void aYoungTreeTakesWhatTheTableOfMinnesotaHas() {
		List<String[]> rows = SharedData.table("water/tree-watering.csv");
		assertThat(rows).hasSize(6).allSatisfy((row) -> {
			double trunk = Double.parseDouble(row[0]) * INCH;
			TreeWatering watering = TreeWatering.young(trunk, 1, 1, null);
			assertThat(TreeWatering.yearsToGrowIn(trunk)).isCloseTo(Double.parseDouble(row[1]), within(1e-9));
			assertThat(watering.lowLitres() / GALLON).isCloseTo(Double.parseDouble(row[2]), within(1e-9));
			assertThat(watering.highLitres() / GALLON).isCloseTo(Double.parseDouble(row[3]), within(1e-9));
		});
	}

	/** University of Minnesota Extension, the same page. */
	@ParameterizedTest
	@CsvSource({ "0, daily", "1, daily", "2, every two to three days", "11, every two to three days", "12, once a week",
			"80, once a week" })
	void howOftenFollowsTheWeeksSincePlanting(long weeks, String often) {
		assertThat(TreeWatering.young(50, weeks, 1, null).often()).isEqualTo(often);
	}

	/**
	 * UC ANR Yolo County and the Urban Forestry Network: 10 to 15 gallons for each inch
	 * of trunk, which is 15 to 22 litres for each centimetre.
	 */
	@Test
	void aGrownTreeTakesTenToFifteenGallonsAnInch() {
		TreeWatering watering = TreeWatering.grown(4 * INCH, 20, Ground.LOAM, 1, null);
		assertThat(watering.lowLitres() / GALLON).isCloseTo(40, within(1e-9));
		assertThat(watering.highLitres() / GALLON).isCloseTo(60, within(1e-9));
		assertThat(watering.lowLitres() / 10.16).isCloseTo(14.9, within(0.05));
		assertThat(watering.highLitres() / 10.16).isCloseTo(22.4, within(0.05));
	}

	@Test
	void aGrownTreeTakesNothingBeforeADrySpellAndMoreInALongOne() {
		assertThat(TreeWatering.grown(100, 13, Ground.CLAY, 1, null).highLitres()).isZero();
		assertThat(TreeWatering.grown(100, 14, Ground.CLAY, 1, null).lowLitres()).isPositive();
		assertThat(TreeWatering.grown(100, 28, Ground.CLAY, 1, null).lowLitres())
			.isEqualTo(TreeWatering.grown(100, 28, Ground.CLAY, 1, null).highLitres());
	}

	@Test
	void saysHowLongTheHoseRunsAndWhatAllTreesTakeTogether() {
		TreeWatering six = TreeWatering.young(2 * INCH, 20, 6, 6.0);
		assertThat(six.amount().words()).isEqualTo(
				"For each of the 6: about 7.6 to 11 litres (2 to 3 gal), 1 to 2 minutes of the hose. Over the root ball "
						+ "and a little beyond, once a week while no rain does it.");
		assertThat(six.amount().explanation().steps()).extracting((step) -> step.value())
			.contains("45 to 68 litres (12 to 18 gal)");
	}

	@Test
	void refusesATrunkThatIsNone() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> TreeWatering.young(0, 1, 1, null))
			.withMessage("a trunk of 0.0 mm is outside 5 to 3,000");
	}

	/** University of Minnesota Extension: a quarter to a third of the container. */
	@Test
	void aYoungShrubTakesAQuarterToAThirdOfItsPot() {
		PotWatering shrub = PotWatering.youngShrub(12, null);
		assertThat(shrub.lowLitres()).isEqualTo(3);
		assertThat(shrub.highLitres()).isCloseTo(4, within(1e-9));
	}

	/** Common practice: a tenth to a fifth runs out below. */
	@Test
	void aPotIsWateredUntilItDrains() {
		PotWatering pot = PotWatering.usual(20);
		assertThat(pot.lowLitres() * 0.15).isBetween(0.1 * pot.lowLitres(), 0.2 * pot.lowLitres());
		assertThat(pot.lowLitres()).isBetween(4.0, 5.0);
		assertThat(pot.amount().words()).contains("a tenth to a fifth runs out");
		assertThat(PotWatering.flush(20).lowLitres()).isEqualTo(40);
	}

	@ParameterizedTest
	@CsvSource({ "true, 12, false", "false, 4.4, false", "false, 4.5, true" })
	void inWinterOnlyThawedGroundIsWatered(boolean frozen, double maximum, boolean allowed) {
		assertThat(WinterWatering.on(frozen, maximum).allowed()).isEqualTo(allowed);
	}

	@Test
	void inWinterWhatIsNotKnownIsLookedAt() {
		assertThat(WinterWatering.on(null, 12.0).allowed()).isNull();
		assertThat(WinterWatering.on(false, null).reason()).startsWith("Look first");
		assertThat(WinterWatering.on(true, null).allowed()).isFalse();
	}

	@ParameterizedTest
	@CsvSource({ "0, 0", "0.254, 0.25", "3.5, 3.5", "9.96, 10", "12.4, 12", "143, 140", "14300, '14,000'", "0.1, 0.1" })
	void roundsToTwoFigures(double value, String words) {
		assertThat(Quantity.figure(value)).isEqualTo(words);
	}

}
