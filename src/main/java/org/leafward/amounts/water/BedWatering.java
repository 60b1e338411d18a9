package org.leafward.amounts.water;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.Quantity;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;

/**
 * Water that fills the root zone of a bed again: what is missing, less the rain that has
 * come since. No more, as it would only seep away below the roots.
 *
 * @param bed the bed
 * @param millimetres depth of water to give, 0 when nothing is missing
 * @param litres the same for the whole bed; null when its area isn't known
 * @param minutes how long that takes; null when area or flow isn't known
 * @param rounds in how many parts
 * @param amount what to do, with how it came about
 */
public record BedWatering(Bed bed, double millimetres, @Nullable Double litres, @Nullable Double minutes, Rounds rounds,
		Amount amount) {

	/** Less than this is not worth unrolling a hose for, mm; our choice. */
	private static final double WORTH_WHILE = 3;

	/**
	 * Fills the root zone.
	 * @param bed the bed
	 * @param missing what is missing to a full root zone, mm, 0 to 2,000; more than the
	 * root zone holds counts as all of it
	 * @param rainSince rain since that was reckoned, mm, 0 to 2,000
	 * @return the watering
	 * @throws BadInput when an amount is out of its bounds
	 */
	public static BedWatering refill(Bed bed, double missing, double rainSince) {
		check("missing", "missing water", missing);
		check("rain", "rain", rainSince);
		double most = Math.min(missing, bed.available());
		double left = Math.max(0, most - rainSince);
		double millimetres = (left < WORTH_WHILE) ? 0 : left;
		Double area = bed.squareMetres();
		Double litres = (area != null) ? Double.valueOf(millimetres * area) : null;
		Double flow = bed.litresPerMinute();
		Double minutes = (litres != null && flow != null) ? Double.valueOf(litres / flow) : null;
		Rounds rounds = (millimetres == 0) ? Rounds.ONE : rounds(bed, millimetres);
		String words = words(bed, millimetres, litres, minutes, rounds);
		return new BedWatering(bed, millimetres, litres, minutes, rounds, new Amount(words,
				Explanation.of("How much water", words).withSteps(steps(bed, most, rainSince, rounds, minutes))));
	}

	/**
	 * Fills the root zone of a bed of which it isn't known how dry it is: when plants
	 * begin to feel it, half of the available water is gone.
	 * @param bed the bed
	 * @return the watering
	 */
	public static BedWatering usual(Bed bed) {
		return refill(bed, bed.readily(), 0);
	}

	private static void check(String field, String what, double millimetres) {
		if (!(millimetres >= 0 && millimetres <= 2000)) {
			throw new BadInput("%s of %s mm is outside 0 to 2,000".formatted(what, millimetres), field,
					"give it in millimetres");
		}
	}

	private static Rounds rounds(Bed bed, double millimetres) {
		Double area = bed.squareMetres();
		Double flow = bed.litresPerMinute();
		return (area != null && flow != null) ? Rounds.of(millimetres, 60 * flow / area, bed.ground())
				: Rounds.usual(bed.ground());
	}

	private static String words(Bed bed, double millimetres, @Nullable Double litres, @Nullable Double minutes,
			Rounds rounds) {
		String depth = Quantity.soilDepth(bed.rootDepthMetres());
		if (millimetres == 0) {
			return "Nothing now: the soil is moist down to %s.".formatted(depth);
		}
		if (litres == null) {
			return "About %s, %s%s; that wets the soil to %s.".formatted(Quantity.millimetres(millimetres),
					Quantity.perArea(millimetres), rounds.words(), depth);
		}
		String time = (minutes == null) ? rounds.words() : ": %s%s".formatted(Quantity.minutes(minutes),
				(rounds.count() == 1) ? " of running water" : " in all," + rounds.words());
		return "About %s%s; that wets the soil to %s.".formatted(Quantity.litres(litres), time, depth);
	}

	private static List<Explanation> steps(Bed bed, double most, double rain, Rounds rounds, @Nullable Double minutes) {
		List<Explanation> steps = new ArrayList<>();
		steps.add(Explanation.of("Missing to a full root zone", Quantity.millimetres(most))
			.withDetail("The roots reach down to %s in %s, which holds %s for them.".formatted(
					Quantity.soilDepth(bed.rootDepthMetres()), bed.ground().words(),
					Quantity.millimetres(bed.available())))
			.withSource("FAO Irrigation and Drainage Paper 56, equation 82 and table 19"));
		if (rain > 0) {
			steps.add(Explanation.of("Rain since", Quantity.millimetres(rain)).withDetail("It is taken off."));
		}
		Double area = bed.squareMetres();
		if (area != null) {
			steps.add(Explanation.of("Area", Quantity.area(area))
				.withDetail("A millimetre on a square metre is a litre."));
		}
		Double flow = bed.litresPerMinute();
		if (minutes != null && flow != null) {
			steps.add(Explanation.of("Running", Quantity.minutes(minutes))
				.withDetail("At %s a minute.".formatted(Quantity.litres(flow))));
		}
		if (rounds.count() > 1) {
			steps.add(Explanation.of("Rounds", String.valueOf(rounds.count()))
				.withDetail("Wet %s takes in about %s mm an hour; what comes faster stands, and runs off beyond %s mm."
					.formatted(bed.ground().words(), Quantity.figure(bed.ground().intake()),
							Quantity.figure(Rounds.STANDING)))
				.withSource(Ground.SOURCE + "; pauses of 30 to 60 minutes: Texas A&M AgriLife Water University; what "
						+ "may stand: from memory"));
		}
		return steps;
	}

}
