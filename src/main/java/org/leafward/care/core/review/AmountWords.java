package org.leafward.care.core.review;

import org.leafward.care.AmountUnit;
import org.leafward.pages.Formats;

/**
 * Logged amounts for readers, metric with US units in brackets. Factors: NIST Special
 * Publication 811, appendix B (inch, US gallon and pound are exact).
 */
public final class AmountWords {

	private static final double MILLIMETRES_PER_INCH = 25.4;

	private static final double LITRES_PER_GALLON = 3.785411784;

	private static final double KILOGRAMS_PER_POUND = 0.45359237;

	/** How numbers are written does not depend on the year. */
	private static final Formats FORMATS = new Formats(2001);

	private AmountWords() {
	}

	/**
	 * An amount in words. What was logged is written as it was, to two decimals; what it
	 * is in the other unit is rounded.
	 * @param amount how much, 0 or more
	 * @param unit what it is in
	 * @return for example "25.4 mm (1 in)" or "2 bags"
	 */
	public static String of(double amount, AmountUnit unit) {
		return switch (unit) {
			case MM -> pair(amount, "mm", amount / MILLIMETRES_PER_INCH, "in", true);
			case INCHES -> pair(amount * MILLIMETRES_PER_INCH, "mm", amount, "in", false);
			case LITRES -> pair(amount, "litres", amount / LITRES_PER_GALLON, "gal", true);
			case GALLONS -> pair(amount * LITRES_PER_GALLON, "litres", amount, "gal", false);
			case KILOGRAMS -> pair(amount, "kg", amount / KILOGRAMS_PER_POUND, "lb", true);
			case POUNDS -> pair(amount * KILOGRAMS_PER_POUND, "kg", amount, "lb", false);
			case BAGS, PIECES, MINUTES -> FORMATS.number(amount, 2) + " " + unit.words();
		};
	}

	/**
	 * A depth of water that was added up.
	 * @param millimetres mm
	 * @return for example "125 mm (4.9 in)"
	 */
	public static String depth(double millimetres) {
		return "%s mm (%s in)".formatted(rounded(millimetres), rounded(millimetres / MILLIMETRES_PER_INCH));
	}

	private static String pair(double metric, String unit, double us, String other, boolean loggedMetric) {
		String first = loggedMetric ? FORMATS.number(metric, 2) : rounded(metric);
		String second = loggedMetric ? rounded(us) : FORMATS.number(us, 2);
		return "%s %s (%s %s)".formatted(first, unit, second, other);
	}

	private static String rounded(double value) {
		return FORMATS.number(value, (value < 1) ? 2 : (value < 100) ? 1 : 0);
	}

}
