package org.leafward.amounts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import org.leafward.measure.BadInput;

/**
 * Amounts in words, metric with US customary units in brackets, to two significant
 * figures. Factors are exact by definition (NIST Special Publication 811, appendix B,
 * from memory).
 */
public final class Quantity {

	/** Litres in a US gallon, 231 cubic inches. */
	public static final double LITRES_PER_GALLON = 3.785411784;

	/** Kilograms in a pound. */
	public static final double KILOGRAMS_PER_POUND = 0.45359237;

	/** Millimetres in an inch. */
	public static final double MILLIMETRES_PER_INCH = 25.4;

	/** Square metres in a square foot. */
	public static final double SQUARE_METRES_PER_SQUARE_FOOT = 0.09290304;

	private Quantity() {
	}

	/**
	 * A volume of water.
	 * @param litres 0 or more
	 * @return for example "1,500 litres (400 gal)"
	 */
	public static String litres(double litres) {
		return figure(litres) + " litres (" + figure(litres / LITRES_PER_GALLON) + " gal)";
	}

	/**
	 * A mass.
	 * @param kilograms 0 or more
	 * @return for example "12 kg (26 lb)"
	 */
	public static String kilograms(double kilograms) {
		return figure(kilograms) + " kg (" + figure(kilograms / KILOGRAMS_PER_POUND) + " lb)";
	}

	/**
	 * A depth of water.
	 * @param millimetres 0 or more
	 * @return for example "150 mm (5.9 in)"
	 */
	public static String millimetres(double millimetres) {
		double inches = millimetres / MILLIMETRES_PER_INCH;
		// 25 mm is an inch to everybody.
		return figure(millimetres) + " mm ("
				+ figure((inches >= 0.2 && inches < 1) ? Math.round(inches * 10) / 10.0 : inches) + " in)";
	}

	/**
	 * A depth of soil.
	 * @param metres 0 or more
	 * @return for example "30 cm (12 in)"
	 */
	public static String soilDepth(double metres) {
		return figure(metres * 100) + " cm (" + figure(metres * 1000 / MILLIMETRES_PER_INCH) + " in)";
	}

	/**
	 * An area.
	 * @param squareMetres 0 or more
	 * @return for example "10 m² (110 sq ft)"
	 */
	public static String area(double squareMetres) {
		return figure(squareMetres) + " m² (" + figure(squareMetres / SQUARE_METRES_PER_SQUARE_FOOT) + " sq ft)";
	}

	/**
	 * Water for each part of an area.
	 * @param millimetres depth of water, which is litres on a square metre
	 * @return for example "25 litres on each square metre (61 gal on 100 sq ft)"
	 */
	public static String perArea(double millimetres) {
		return figure(millimetres) + " litres on each square metre ("
				+ figure(100 * millimetres * SQUARE_METRES_PER_SQUARE_FOOT / LITRES_PER_GALLON) + " gal on 100 sq ft)";
	}

	/**
	 * A duration.
	 * @param minutes 0 or more
	 * @return for example "12 minutes" or "2 hours 20 minutes"; a minute at least
	 */
	public static String minutes(double minutes) {
		long whole = Math.max(1, Math.round(rounded(minutes).doubleValue()));
		if (whole < 120) {
			return (whole == 1) ? "1 minute" : whole + " minutes";
		}
		long rest = whole % 60;
		return (whole / 60) + " hours" + ((rest > 0) ? " " + rest + " minutes" : "");
	}

	/**
	 * A number to two significant figures.
	 * @param value any finite number
	 * @return without zeros behind the point, thousands parted by a comma
	 */
	public static String figure(double value) {
		BigDecimal rounded = rounded(value);
		return String.format(Locale.ROOT, "%,." + Math.max(0, rounded.stripTrailingZeros().scale()) + "f", rounded);
	}

	private static BigDecimal rounded(double value) {
		return BigDecimal.valueOf(value).round(new MathContext(2, RoundingMode.HALF_UP));
	}

	/**
	 * Checks a figure that was given.
	 * @param field name of the field
	 * @param what the figure in words
	 * @param value what was given
	 * @param low lowest
	 * @param high highest
	 * @return the figure
	 * @throws BadInput when it is out of its bounds or no number
	 */
	public static double within(String field, String what, double value, double low, double high) {
		if (value >= low && value <= high) {
			return value;
		}
		throw new BadInput("%s %s is outside %s to %s".formatted(what, plain(value), plain(low), plain(high)), field,
				"give a number between the two");
	}

	private static String plain(double value) {
		return Double.isFinite(value) ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString() : "that large";
	}

}
