package org.leafward.amounts;

import java.util.Locale;
import org.leafward.measure.Dimension;
import org.leafward.measure.NumberWords;

/** Amounts in words: rounded as far as they can be trusted, metric and US customary. */
public final class Quantities {

	/** Litres in a US gallon. */
	public static final double LITRES_PER_GALLON = Dimension.VOLUME.read("gallon", "1 gal");

	/** Millimetres in an inch. */
	public static final double MILLIMETRES_PER_INCH = Dimension.THICKNESS.read("inch", "1 in");

	/** Square metres in a hundred square feet. */
	public static final double SQUARE_METRES_PER_HUNDRED_SQUARE_FEET = Dimension.AREA.read("area", "100 sq ft");

	private Quantities() {
	}

	/**
	 * A number with two significant figures, without an exponent.
	 * @param value 0 or more
	 * @return for example "140", "12", "3.5", "0.25"
	 */
	public static String two(double value) {
		double rounded = rounded(value);
		if (rounded >= 10) {
			return String.format(Locale.ROOT, "%,.0f", rounded);
		}
		return trimmed(NumberWords.fixed(rounded, (rounded >= 1) ? 1 : 2));
	}

	/**
	 * The value rounded to two significant figures.
	 * @param value 0 or more
	 * @return the nearest such value
	 */
	public static double rounded(double value) {
		if (value <= 0) {
			return 0;
		}
		double step = Math.pow(10, Math.floor(Math.log10(value)) - 1);
		return Math.round(value / step) * step;
	}

	private static String trimmed(String number) {
		return number.contains(".") ? number.replaceFirst("\\.?0+$", "") : number;
	}

	/**
	 * A volume.
	 * @param litres 0 or more
	 * @return for example "140 litres (37 gal)"
	 */
	public static String litres(double litres) {
		return "%s litres (%s gal)".formatted(two(litres), two(litres / LITRES_PER_GALLON));
	}

	/**
	 * A depth of water.
	 * @param millimetres 0 or more
	 * @return for example "25 mm (1 in)"
	 */
	public static String millimetres(double millimetres) {
		double inches = millimetres / MILLIMETRES_PER_INCH;
		return "%s mm (%s in)".formatted(two(millimetres),
				(inches < 0.2) ? two(inches) : trimmed(NumberWords.fixed(inches, 1)));
	}

	/**
	 * A depth of soil.
	 * @param metres 0 or more
	 * @return for example "45 cm (18 in)"
	 */
	public static String depth(double metres) {
		return "%s cm (%s in)".formatted(two(100 * metres), two(1000 * metres / MILLIMETRES_PER_INCH));
	}

	/**
	 * Water for each part of an area.
	 * @param millimetres depth of water, which is litres on a square metre
	 * @return for example "25 litres on each square metre (61 gal on 100 sq ft)"
	 */
	public static String perArea(double millimetres) {
		return "%s litres on each square metre (%s gal on 100 sq ft)".formatted(two(millimetres),
				two(millimetres * SQUARE_METRES_PER_HUNDRED_SQUARE_FEET / LITRES_PER_GALLON));
	}

	/**
	 * A duration.
	 * @param minutes 0 or more
	 * @return for example "12 minutes" or "2 hours 20 minutes"
	 */
	public static String minutes(double minutes) {
		long whole = Math.max(1, Math.round(rounded(minutes)));
		if (whole < 120) {
			return (whole == 1) ? "1 minute" : whole + " minutes";
		}
		long rest = whole % 60;
		return (whole / 60) + " hours" + ((rest > 0) ? " " + rest + " minutes" : "");
	}

}
