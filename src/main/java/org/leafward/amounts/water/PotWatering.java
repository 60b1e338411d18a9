package org.leafward.amounts.water;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.Quantity;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;

/**
 * Water for one pot, by its volume.
 *
 * @param lowLitres least
 * @param highLitres most
 * @param amount what to do, with how it came about
 */
public record PotWatering(double lowLitres, double highLitres, Amount amount) {

	/**
	 * Potting mix gives up about a fifth of its volume as water until it has to be
	 * watered again, and a quarter when it is quite dry; from memory.
	 */
	private static final double LOW = 0.2;

	private static final double HIGH = 0.25;

	/** A tenth to a fifth is to run out below; common practice. */
	private static final double DRAINED = 0.15;

	/** Twice the volume of the pot carries salts out; from memory. */
	private static final double FLUSHES = 2;

	/** University of Minnesota Extension: a quarter to a third of the pot's volume. */
	private static final double SHRUB_LOW = 1 / 4.0;

	private static final double SHRUB_HIGH = 1 / 3.0;

	/**
	 * A watering of a pot that is dry at the top.
	 * @param potLitres volume of the pot, 0.1 to 5,000 l
	 * @return the watering
	 * @throws BadInput when the volume is out of its bounds
	 */
	public static PotWatering usual(double potLitres) {
		double low = LOW * check(potLitres) / (1 - DRAINED);
		double high = HIGH * potLitres / (1 - DRAINED);
		return of(low, high,
				"About %s for each pot, slowly, until a tenth to a fifth runs out below."
					.formatted(TreeWatering.range(low, high)),
				potLitres, "A mix gives up a fifth to a quarter of its volume as water; 15 % more runs out below.",
				"a tenth to a fifth through the bottom: common practice; the share of water in the mix: from memory");
	}

	/**
	 * Clear water that carries salts out.
	 * @param potLitres volume of the pot, 0.1 to 5,000 l
	 * @return the watering
	 * @throws BadInput when the volume is out of its bounds
	 */
	public static PotWatering flush(double potLitres) {
		double litres = FLUSHES * check(potLitres);
		return of(litres, litres,
				"%s of clear water through each pot, slowly; empty the saucer.".formatted(Quantity.litres(litres)),
				potLitres, "Twice the volume of the pot.", "twice the volume: from memory");
	}

	/**
	 * A watering of a shrub that is growing in, by the pot that it came in.
	 * @param potLitres volume of that pot, 0.1 to 5,000 l
	 * @param litresPerMinute what the hose gives; null when not known
	 * @return the watering
	 * @throws BadInput when the volume is out of its bounds
	 */
	public static PotWatering youngShrub(double potLitres, @Nullable Double litresPerMinute) {
		double low = SHRUB_LOW * check(potLitres);
		double high = SHRUB_HIGH * potLitres;
		return of(low, high, "About %s for each shrub, over its root ball.".formatted(TreeWatering.range(low, high)),
				potLitres, "A quarter to a third of the volume of the pot that it came in.",
				"University of Minnesota Extension, Watering newly planted trees and shrubs");
	}

	private static double check(double potLitres) {
		if (!(potLitres >= 0.1 && potLitres <= 5000)) {
			throw new BadInput("a pot of %s l is outside 0.1 to 5,000".formatted(potLitres), "pot",
					"give the volume of one pot");
		}
		return potLitres;
	}

	private static PotWatering of(double low, double high, String words, double pot, String detail, String source) {
		return new PotWatering(low, high, new Amount(words, Explanation.of("How much water", words)
			.withSteps(List.of(Explanation.of("Pot", Quantity.litres(pot)).withDetail(detail).withSource(source)))));
	}

}
