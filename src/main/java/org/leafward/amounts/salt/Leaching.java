package org.leafward.amounts.salt;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.Quantity;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;

/**
 * Water that carries salt out of a bed.
 *
 * @param outcome whether to leach at all
 * @param millimetres depth of water in all, mm; 0 where it isn't needed or does nothing
 * @param litres for the bed, or null where its area isn't known
 * @param passes how many times to water; all are alike and add up to the whole
 * @param shareLeft share of the salt that stays, 0.125 to 1
 * @param amount what to do in words, with how it came about
 */
public record Leaching(Outcome outcome, double millimetres, @Nullable Double litres, int passes, double shareLeft,
		Amount amount) {

	/** More passes than this are told to be a doubtful plan (our choice). */
	private static final int MANY = 8;

	/** Whether to leach. */
	public enum Outcome {

		/** Leach. */
		LEACH,

		/** There isn't more salt than wanted. */
		NOT_NEEDED,

		/** Water doesn't leave the soil, so salt can't either. */
		NO_DRAINAGE

	}

	/**
	 * Takes half of the salt out: what to do without a soil test.
	 * @param bed the bed
	 * @return the water
	 */
	public static Leaching half(SaltedBed bed) {
		return of(bed, 0.5, Explanation.of("Share of the salt to take out", "50 %")
			.withDetail("Without a test of the soil nobody knows how much there is; half is the usual first step."));
	}

	/**
	 * Takes salt out down to what is wanted.
	 * @param bed the bed
	 * @param now conductivity of the saturated paste now, dS/m, 0 to 300
	 * @param wanted what it may be afterwards, dS/m, 0.5 to 50, at least an eighth of now
	 * @return the water
	 * @throws BadInput when more is wanted than water can do
	 */
	public static Leaching to(SaltedBed bed, double now, double wanted) {
		Quantity.within("ec", "conductivity of the soil", now, 0, 300);
		Quantity.within("wanted", "conductivity wanted", wanted, 0.5, 50);
		double share = (now <= wanted) ? 1 : wanted / now;
		if (share < LeachingCurve.LEAST_SHARE - 1e-9) {
			throw new BadInput(
					"from %.1f to %.1f dS/m more than seven eighths of the salt would have to go".formatted(now,
							wanted),
					"wanted", "give %.1f dS/m or more, test the soil again and leach once more"
						.formatted(Math.ceil(now * LeachingCurve.LEAST_SHARE * 10) / 10));
		}
		return of(bed, share,
				Explanation.of("Share of the salt to take out", percent(1 - share))
					.withDetail("From " + Conductivity.words(now) + " to " + Conductivity.words(wanted)
							+ ", as saturated paste; salt and conductivity go together."));
	}

	private static Leaching of(SaltedBed bed, double share, Explanation goal) {
		Outcome outcome = (share >= 1) ? Outcome.NOT_NEEDED
				: (bed.drainage() == Drainage.NONE) ? Outcome.NO_DRAINAGE : Outcome.LEACH;
		double water = (outcome == Outcome.LEACH) ? LeachingCurve.water(share) : 0;
		double depth = water * bed.rootMetres() * 1000;
		Double area = bed.squareMetres();
		Double litres = (area != null) ? Double.valueOf(depth * area) : null;
		// A hair above a whole number of passes is no pass more.
		int passes = (depth > 0) ? (int) Math.max(1, Math.ceil(depth / bed.drainage().mostMillimetres() - 1e-9)) : 0;
		String words = words(bed, outcome, depth, litres, passes);
		List<Explanation> steps = new ArrayList<>();
		steps.add(goal);
		steps.add(Explanation.of("Drainage", bed.drainage().words())
			.withDetail(Drainage.CHECK)
			.withSource("common practice, from memory"));
		if (outcome == Outcome.LEACH) {
			steps.add(water(bed, water, depth));
			steps.add(Explanation.of("At once", "at most " + Quantity.millimetres(bed.drainage().mostMillimetres()))
				.withDetail("In " + passes
						+ ((passes == 1) ? " pass."
								: " passes, so that water doesn’t run off or "
										+ "stand; let it drain for 3 or 4 days between them."))
				.withSource("2 or 3 applications over 7 to 10 days for 6 inches, Purdue Landscape Report, read; where "
						+ "it drains slowly, our choice"));
		}
		return new Leaching(outcome, depth, litres, passes, (outcome == Outcome.LEACH) ? share : 1,
				new Amount(words,
						Explanation.of("Leaching after " + bed.cause().words(), result(outcome, depth, litres))
							.withSteps(steps)));
	}

	private static Explanation water(SaltedBed bed, double water, double depth) {
		return Explanation.of("Water that passes through", Quantity.millimetres(depth))
			.withDetail(NumberWords.fixed(water, 2) + " times the depth of the soil, "
					+ Quantity.soilDepth(bed.rootMetres())
					+ ", on moist soil. It is taken from the two steps that were read; the curves below, from memory, "
					+ "check it.")
			.withSource(LeachingCurve.SOURCE)
			.withSteps(List.of(
					Explanation.of("The usual rule of thumb", "6, 12 and 24 inches on a foot take 50, 80 and 90 %")
						.withSource("extension services, from memory"),
					Explanation.of("The same water by Reeve’s curve", percent(LeachingCurve.reeve(water)) + " stays")
						.withSource("ponded water, USDA Agriculture Handbook 60, from memory"),
					Explanation
						.of("By Hoffman’s, sprinkled and ponded on fine soil",
								percent(LeachingCurve.hoffman(water, 0.1)) + " and "
										+ percent(LeachingCurve.hoffman(water, 0.3)) + " stays")
						.withSource("from memory")));
	}

	private static String words(SaltedBed bed, Outcome outcome, double depth, @Nullable Double litres, int passes) {
		return switch (outcome) {
			case NOT_NEEDED -> "No leaching needed: there isn’t more salt than wanted.";
			case NO_DRAINAGE -> "Don’t leach: water that can’t drain takes no salt away. Mend the drainage, raise the "
					+ "bed or change the soil first.";
			case LEACH -> {
				String whole = (litres != null)
						? Quantity.litres(litres) + " of clear water, " + Quantity.millimetres(depth) + " deep"
						: Quantity.millimetres(depth) + " of clear water";
				String parts = (passes == 1) ? " at once" : " in " + passes + " passes of "
						+ ((litres != null) ? Quantity.litres(litres / passes) : Quantity.millimetres(depth / passes))
						+ ", 3 or 4 days apart";
				yield "About " + whole + "," + parts + ", " + bed.cause().when() + "."
						+ ((bed.drainage() == Drainage.UNTESTED) ? " First see that the soil drains." : "")
						+ ((passes > MANY) ? " With so many passes new soil may be less work." : "");
			}
		};
	}

	private static String result(Outcome outcome, double depth, @Nullable Double litres) {
		return switch (outcome) {
			case NOT_NEEDED -> "not needed";
			case NO_DRAINAGE -> "useless before the soil drains";
			case LEACH -> (litres != null) ? Quantity.litres(litres) : Quantity.millimetres(depth);
		};
	}

	private static String percent(double share) {
		return Math.round(share * 100) + " %";
	}

}
