package org.leafward.amounts.salt;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.amounts.Quantity;
import org.leafward.amounts.salt.Leaching.Outcome;
import org.leafward.amounts.salt.SaltedBed.Cause;
import org.leafward.climate.core.water.TextureClass;
import org.leafward.measure.BadInput;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Sources stand in the heads of the tables in {@code shared/salt}. */
class LeachingTests {

	private static final double FOOT = 0.3048;

	private static final double HUNDRED_SQUARE_FEET = 100 * Quantity.SQUARE_METRES_PER_SQUARE_FOOT;

	@Test
	void theCurveGoesThroughWhatWasReadAndNearTheRuleOfThumb() {
		for (String[] row : SharedData.table("salt/leaching-curves.csv")) {
			double water = number(row[0]);
			if (!row[1].isEmpty()) {
				assertThat(1 - LeachingCurve.shareLeft(water)).isCloseTo(number(row[1]), within(0.0001));
				assertThat(LeachingCurve.water(1 - number(row[1]))).isCloseTo(water, within(0.0001));
			}
			assertThat(1 - LeachingCurve.shareLeft(water)).isCloseTo(number(row[2]), within(0.0501));
			assertThat(1 - LeachingCurve.reeve(water)).isCloseTo(number(row[3]), within(0.0001));
		}
	}

	/**
	 * The check: the curve lies between Hoffman's curves for sprinkled and for ponded
	 * fine soil, and Reeve's never leaves less than Hoffman's for sprinkled. Both from
	 * memory.
	 */
	@Test
	void theCurveLiesBetweenHoffmansCurves() {
		for (double water = 0.35; water <= 2; water += 0.05) {
			assertThat(LeachingCurve.shareLeft(water)).isBetween(LeachingCurve.hoffman(water, 0.1),
					LeachingCurve.hoffman(water, 0.3));
			assertThat(LeachingCurve.reeve(water)).isGreaterThan(LeachingCurve.hoffman(water, 0.1));
		}
	}

	@Test
	void waterAndShareAreInverse() {
		double before = 1;
		for (double water = 0.01; water < 2; water += 0.01) {
			double share = LeachingCurve.shareLeft(water);
			assertThat(share).isLessThan(before);
			assertThat(LeachingCurve.water(share)).isCloseTo(water, within(1e-9));
			before = share;
		}
	}

	/**
	 * Purdue Landscape Report and A&amp;L Great Lakes Laboratories, read: 6 inches of
	 * water, about 372 gallons on 100 square feet, leach about half of the salt. By unit
	 * algebra it is 374.
	 */
	@Test
	void halfOfTheSaltTakesSixInchesOnAFoot() {
		Leaching half = Leaching.half(new SaltedBed(HUNDRED_SQUARE_FEET, FOOT, Drainage.GOOD, Cause.DE_ICING));
		assertThat(half.millimetres()).isCloseTo(6 * 25.4, within(0.01));
		assertThat(half.litres() / Quantity.LITRES_PER_GALLON).isCloseTo(372, within(2.5));
		assertThat(half.passes()).as("2 or 3 applications over 7 to 10 days").isBetween(2, 3);
		assertThat(half.amount().words())
			.isEqualTo("About 1,400 litres (370 gal) of clear water, 150 mm (6 in) deep, in 3 passes of 470 litres "
					+ "(120 gal), 3 or 4 days apart, once the ground has thawed and salting is over, before buds break.");
	}

	/** By hand: 80 % goes with 0.25/0.2 times the depth of the soil. */
	@Test
	void saltGoesDownToWhatIsWanted() {
		Leaching leaching = Leaching.to(new SaltedBed(null, 0.3, Drainage.UNTESTED, Cause.FERTILISER), 10, 2);
		assertThat(leaching.millimetres()).isCloseTo(375, within(0.001));
		assertThat(leaching.litres()).isNull();
		assertThat(leaching.amount().words()).startsWith("About 380 mm (15 in) of clear water, in 5 passes of 75 mm")
			.endsWith("First see that the soil drains.");
		assertThat(leaching.amount().explanation().toString()).contains("Reeve", "from memory", "Purdue", "31 %");
	}

	@Test
	void theTextureSpeaksWhereNobodyTestedTheDrainage() {
		assertThat(Leaching.half(SaltedBed.ofSoil(10.0, 0.3, "silt loam", Cause.DE_ICING)).passes()).isEqualTo(2);
		assertThat(Leaching.half(SaltedBed.ofSoil(10.0, 0.3, "clay", Cause.DE_ICING)).passes()).isEqualTo(6);
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> SaltedBed.ofSoil(10.0, 0.3, "moon dust", Cause.DE_ICING));
	}

	@Test
	void nothingIsLeachedWhereItIsNeedlessOrUseless() {
		Leaching needless = Leaching.to(bed(Drainage.GOOD), 1.9, 2);
		assertThat(needless.outcome()).isEqualTo(Outcome.NOT_NEEDED);
		assertThat(needless.litres()).isZero();
		Leaching useless = Leaching.to(bed(Drainage.NONE), 8, 2);
		assertThat(useless.outcome()).isEqualTo(Outcome.NO_DRAINAGE);
		assertThat(useless.litres()).isZero();
		assertThat(useless.passes()).isZero();
		assertThat(useless.shareLeft()).isEqualTo(1);
		assertThat(useless.amount().words()).startsWith("Don’t leach");
	}

	@Test
	void moreThanWaterCanDoIsRefused() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Leaching.to(bed(Drainage.GOOD), 40, 2))
			.satisfies((refused) -> assertThat(refused.byField()).containsKey("wanted"))
			.withMessageContaining("seven eighths");
		assertThat(Leaching.to(bed(Drainage.GOOD), 40, 5).millimetres()).as("its own advice can be followed")
			.isCloseTo(600, within(0.001));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new SaltedBed(1.0, 3, Drainage.GOOD, Cause.TESTED))
			.withMessageContaining("300 is outside 5 to 100");
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> new SaltedBed(Double.NaN, 0.3, Drainage.GOOD, Cause.TESTED));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> new Conductivity(Double.POSITIVE_INFINITY, Extract.ONE_TO_TWO, TextureClass.LOAM));
	}

	@Test
	void amountsGrowAndPassesAddUp() {
		Random random = new Random(5);
		for (int i = 0; i < 2000; i++) {
			Drainage drainage = random.nextBoolean() ? Drainage.GOOD : Drainage.SLOW;
			double area = 0.1 + random.nextDouble() * 500;
			double roots = 0.05 + random.nextDouble() * 0.9;
			double wanted = 0.5 + random.nextDouble() * 5;
			double now = wanted * (0.5 + random.nextDouble() * 7.4);
			Leaching leaching = Leaching.to(new SaltedBed(area, roots, drainage, Cause.DE_ICING), now, wanted);
			double litres = leaching.litres();
			assertThat(litres).isCloseTo(leaching.millimetres() * area, within(1e-6));
			assertThat(leaching.passes() * drainage.mostMillimetres())
				.isGreaterThanOrEqualTo(leaching.millimetres() - 1e-3);
			assertThat((leaching.passes() - 1) * drainage.mostMillimetres())
				.isLessThanOrEqualTo(leaching.millimetres());
			assertThat(Leaching.to(new SaltedBed(area * 2, roots, drainage, Cause.DE_ICING), now, wanted).litres())
				.isCloseTo(2 * litres, within(1e-6));
			assertThat(Leaching.to(new SaltedBed(area, roots + 0.05, drainage, Cause.DE_ICING), now, wanted).litres())
				.isGreaterThanOrEqualTo(litres);
			assertThat(Leaching.to(new SaltedBed(area, roots, drainage, Cause.DE_ICING), now * 1.01, wanted).litres())
				.isGreaterThanOrEqualTo(litres);
			assertThat(leaching.amount().words()).hasSizeLessThanOrEqualTo(300);
		}
	}

	@Test
	void theWatersOwnSaltTakesAShare() {
		for (String[] row : SharedData.table("salt/leaching.csv")) {
			assertThat(LeachingRequirement.share(number(row[0]), number(row[1]))).isCloseTo(number(row[2]),
					within(number(row[3])));
		}
		// SDSU lecture on ASCE Manual 71, read: 100 mm used and a share of 0.2 take 125.
		assertThat(LeachingRequirement.applied(100, 0.2)).isEqualTo(125);
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> LeachingRequirement.share(20, 2));
	}

	@Test
	void aDilutionIsMovedToThePaste() {
		for (String[] row : SharedData.table("salt/dilution.csv")) {
			TextureClass soil = TextureClass.valueOf(row[0]);
			assertThat(new Conductivity(2, Extract.ONE_TO_TWO, soil).saturated())
				.isCloseTo(2 * number(row[1]) + number(row[2]), within(1e-9));
			assertThat(new Conductivity(2, Extract.SATURATED_PASTE, soil).saturated()).isEqualTo(2);
		}
	}

	@ParameterizedTest
	@EnumSource(TextureClass.class)
	void moreInADilutionIsMoreInThePaste(TextureClass soil) {
		double before = -1;
		for (double ec = 0; ec <= 100; ec += 0.25) {
			double paste = new Conductivity(ec, Extract.ONE_TO_TWO, soil).saturated();
			assertThat(paste).isNotNegative().isGreaterThanOrEqualTo(before);
			before = paste;
		}
		assertThat(Drainage.presumed(soil)).isNotIn(Drainage.NONE, Drainage.GOOD);
	}

	@Test
	void adviceFollowsExposureAndProduct() {
		assertThat(SaltAdvice.beforeWinter(List.of(Exposure.SPRAY), DeIcer.SODIUM_CHLORIDE).toString())
			.contains("burlap", "Illinois")
			.doesNotContain("Shovel");
		assertThat(SaltAdvice.afterThaw(List.of(Exposure.SPRAY), DeIcer.SODIUM_CHLORIDE).toString()).contains("rinse",
				"tested for sodium");
		assertThat(SaltAdvice.afterThaw(List.of(), DeIcer.CALCIUM_CHLORIDE)).isEmpty();
		for (DeIcer product : DeIcer.values()) {
			assertThat(product.source()).containsAnyOf("read", "memory", "choice");
		}
	}

	private static SaltedBed bed(Drainage drainage) {
		return new SaltedBed(10.0, 0.3, drainage, Cause.DE_ICING);
	}

	private static double number(String text) {
		return Double.parseDouble(text);
	}

}
