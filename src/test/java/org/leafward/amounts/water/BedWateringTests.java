package org.leafward.amounts.water;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.measure.BadInput;
import org.leafward.measure.Dimension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Water for beds, against units and FAO-56, and in its properties. */
class BedWateringTests {

	private static final double GALLON = 3.785411784;

	private static Bed bed(Ground ground, double depth, Double area, Double flow) {
		return new Bed(ground, depth, area, flow);
	}

	/** Unit algebra: 7.48052 gallons to the cubic foot over 12 is 0.623. */
	@Test
	void anInchOnASquareFootIsSixTenthsOfAGallon() {
		double area = Dimension.AREA.read("area", "100 sq ft");
		BedWatering watering = BedWatering.refill(bed(Ground.SILT_LOAM, 0.6, area, null), 25.4, 0);
		assertThat(watering.litres() / GALLON / 100).isCloseTo(0.623, within(0.0005));
	}

	/**
	 * FAO-56, table 19: loam holds 130 to 180 mm in a metre, its middle 155; equations 82
	 * and 83 with p of 0.5.
	 */
	@Test
	void theRootZoneHoldsWhatFao56Says() {
		Bed bed = bed(Ground.LOAM, 0.4, null, null);
		assertThat(bed.available()).isCloseTo(62, within(1e-9));
		assertThat(bed.readily()).isCloseTo(31, within(1e-9));
		assertThat(BedWatering.usual(bed).millimetres()).isCloseTo(31, within(1e-9));
		assertThat(BedWatering.refill(bed, 500, 0).millimetres()).as("no more than it holds")
			.isCloseTo(62, within(1e-9));
	}

	@Test
	void tellsMinutesAndRoundsOfAHose() {
		BedWatering watering = BedWatering.refill(bed(Ground.CLAY, 0.3, 10.0, 12.0), 25, 0);
		assertThat(watering.litres()).isEqualTo(250);
		assertThat(watering.minutes()).isCloseTo(250 / 12.0, within(1e-9));
		assertThat(watering.amount().words()).isEqualTo(
				"About 250 litres (66 gal): 21 minutes in all, in 5 rounds an hour apart; that wets the soil to 30 cm (12 in).");
		assertThat(BedWatering.refill(bed(Ground.SAND, 0.3, 40.0, 12.0), 10, 0).amount().words())
			.isEqualTo("About 400 litres (110 gal): 33 minutes of running water; that wets the soil to 30 cm (12 in).");
	}

	@Test
	void tellsDepthAndAreaWhenNothingElseIsKnown() {
		assertThat(BedWatering.refill(bed(Ground.LOAM, 0.45, null, null), 25, 0).amount().words()).isEqualTo(
				"About 25 mm (1 in), 25 litres on each square metre (61 gal on 100 sq ft); that wets the soil to 45 cm (18 in).");
	}

	@Test
	void tellsWhenNothingIsMissing() {
		BedWatering watering = BedWatering.refill(bed(Ground.LOAM, 0.45, 10.0, 12.0), 20, 18);
		assertThat(watering.millimetres()).isZero();
		assertThat(watering.amount().words()).isEqualTo("Nothing now: the soil is moist down to 45 cm (18 in).");
	}

	/** Texas A&amp;M AgriLife: clay in two or three rounds, 30 to 60 minutes apart. */
	@ParameterizedTest
	@CsvSource({ "CLAY, 3, 60", "CLAY_LOAM, 2, 60", "LOAM, 1, 0", "SAND, 1, 0" })
	void roundsFollowTheSoil(Ground ground, int count, int pause) {
		assertThat(Rounds.usual(ground)).isEqualTo(new Rounds(count, pause));
	}

	@Test
	void waterThatSoaksInAsFastAsItComesNeedsNoRounds() {
		assertThat(Rounds.of(100, 15, Ground.SANDY_LOAM)).isEqualTo(Rounds.ONE);
	}

	@Test
	void moreRainOrASmallerBedOrMoistSoilNeverRaisesTheAmount() {
		Random random = new Random(5);
		for (int i = 0; i < 2000; i++) {
			Ground ground = Ground.values()[random.nextInt(6)];
			double depth = 0.05 + random.nextDouble();
			double area = 1 + 500 * random.nextDouble();
			double missing = 200 * random.nextDouble();
			double rain = 60 * random.nextDouble();
			BedWatering now = BedWatering.refill(bed(ground, depth, area, 15.0), missing, rain);
			assertThat(BedWatering.refill(bed(ground, depth, area, 15.0), missing, rain + 10).litres())
				.isLessThanOrEqualTo(now.litres());
			assertThat(BedWatering.refill(bed(ground, depth, area / 2, 15.0), missing, rain).litres())
				.isLessThanOrEqualTo(now.litres());
			assertThat(BedWatering.refill(bed(ground, depth, area, 15.0), missing / 2, rain).litres())
				.isLessThanOrEqualTo(now.litres());
			assertThat(now.millimetres()).isBetween(0.0, Math.max(0, missing - rain) + 1e-9);
			assertThat(now.millimetres()).isLessThanOrEqualTo(bed(ground, depth, null, null).available() + 1e-9);
			assertThat(now.amount().words().length()).isLessThanOrEqualTo(300);
		}
	}

	/** What stands after a round, less what soaks in meanwhile, stays where it is. */
	@Test
	void noRoundLeavesMoreStandingThanTheGroundHolds() {
		Random random = new Random(6);
		IntStream.range(0, 2000).forEach((i) -> {
			Ground ground = Ground.values()[random.nextInt(6)];
			double rate = 1 + 200 * random.nextDouble();
			double amount = 60 * random.nextDouble();
			Rounds rounds = Rounds.of(amount, rate, ground);
			double each = amount / rounds.count();
			double standing = each - ground.intake() * each / rate;
			assertThat(rounds.count() == Rounds.MOST || standing <= Rounds.STANDING + 1e-6).isTrue();
		});
	}

	@Test
	void refusesWhatCantBe() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> bed(Ground.LOAM, 3, null, null));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> bed(Ground.LOAM, 0.3, -1.0, null));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> BedWatering.refill(bed(Ground.LOAM, 0.3, null, null), -1, 0))
			.withMessage("missing water of -1.0 mm is outside 0 to 2,000");
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Ground.of("mud"))
			.satisfies((ex) -> assertThat(ex.mend()).contains("clay loam"));
	}

}
