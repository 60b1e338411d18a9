package org.leafward.climate.core;

import java.util.function.IntPredicate;

/**
 * Turns the comparisons of the searches round: from a value to the limits that it meets.
 * A first guess is corrected by the comparison itself, so that both ways agree to the
 * last bit.
 */
final class StepLimits {

	private static final int UNMET = Integer.MAX_VALUE;

	private StepLimits() {
	}

	/**
	 * The shift from which on a temperature counts as frozen, hundredths of °C.
	 * @param celsius of the station's soil, may be NaN
	 * @return a whole number, or the highest when it never does
	 */
	static int frozenFrom(float celsius) {
		return Float.isNaN(celsius) ? UNMET
				: least((int) Math.ceil(celsius * 100.0), (limit) -> celsius - limit / 100.0 <= GroundSearch.FROZEN);
	}

	/**
	 * The shift up to which a temperature counts as thawed, hundredths of °C.
	 * @param celsius of the station's soil, may be NaN
	 * @return a whole number, or the negative of the highest when it never does
	 */
	static int thawedUpTo(float celsius) {
		return Float.isNaN(celsius) ? -UNMET : -least(-(int) Math.floor((celsius - GroundSearch.THAWED) * 100),
				(negative) -> celsius + negative / 100.0 > GroundSearch.THAWED);
	}

	/**
	 * The lowest number that passes.
	 * @param guess near it
	 * @param passes false up to some number, true from there on
	 * @return that number
	 */
	static int least(int guess, IntPredicate passes) {
		int least = guess;
		while (passes.test(least - 1)) {
			least--;
		}
		while (!passes.test(least)) {
			least++;
		}
		return least;
	}

}
