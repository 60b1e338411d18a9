package org.leafward.measure;

import java.util.Locale;

/**
 * Numbers written out for readers. Explanations are made of hundreds of them, and a
 * format string is read anew each time, so that the usual case does without.
 */
public final class NumberWords {

	private static final int[] POWERS = { 1, 10, 100 };

	/** Doubles below have room for the decimals and for telling halves. */
	private static final double LARGE = 1e9;

	/** Nearer to a half than this, the slow way decides. */
	private static final double NEAR_HALF = 1e-4;

	private NumberWords() {
	}

	/**
	 * A number with a fixed number of decimals, the same as {@link String#format} gives.
	 * @param value the number
	 * @param decimals 0 to 2
	 * @return for example "12.50"
	 */
	public static String fixed(double value, int decimals) {
		double scaled = Math.abs(value) * POWERS[decimals];
		// Also when the number is none.
		if (!(scaled < LARGE)) {
			return slowly(value, decimals);
		}
		long whole = (long) scaled;
		double rest = scaled - whole;
		if (Math.abs(rest - 0.5) < NEAR_HALF) {
			return slowly(value, decimals);
		}
		long rounded = (rest > 0.5) ? whole + 1 : whole;
		StringBuilder words = new StringBuilder(16);
		if (Double.compare(value, 0) < 0) {
			words.append('-');
		}
		words.append(rounded / POWERS[decimals]);
		if (decimals > 0) {
			words.append('.');
			long part = rounded % POWERS[decimals];
			if (decimals == 2 && part < 10) {
				words.append('0');
			}
			words.append(part);
		}
		return words.toString();
	}

	private static String slowly(double value, int decimals) {
		return String.format(Locale.ROOT, "%." + decimals + "f", value);
	}

}
