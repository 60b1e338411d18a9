package org.leafward.climate.core.water;

/**
 * Water in the root zone. Source: FAO Irrigation and Drainage Paper 56, chapter 8, by
 * equation number.
 */
public final class SoilWater {

	private static final double LOWEST_FRACTION = 0.1;

	private static final double HIGHEST_FRACTION = 0.8;

	private SoilWater() {
	}

	/**
	 * Total available water TAW, equation 82.
	 * @param fieldCapacity m³/m³, 0 to 1
	 * @param wiltingPoint m³/m³, 0 to {@code fieldCapacity}
	 * @param depth of the roots, m, 0 to 10
	 * @return mm
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static double available(double fieldCapacity, double wiltingPoint, double depth) {
		Bounds.check("field capacity", fieldCapacity, 0, 1);
		Bounds.check("wilting point", wiltingPoint, 0, fieldCapacity);
		return 1000 * (fieldCapacity - wiltingPoint) * depth(depth);
	}

	/**
	 * Total evaporable water TEW of the surface layer, equation 73.
	 * @param fieldCapacity m³/m³, 0 to 1
	 * @param wiltingPoint m³/m³, 0 to {@code fieldCapacity}
	 * @param depth of the layer, m, 0.10 to 0.15 as a rule
	 * @return mm
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static double evaporable(double fieldCapacity, double wiltingPoint, double depth) {
		Bounds.check("field capacity", fieldCapacity, 0, 1);
		Bounds.check("wilting point", wiltingPoint, 0, fieldCapacity);
		return 1000 * (fieldCapacity - 0.5 * wiltingPoint) * depth(depth);
	}

	/**
	 * Depletion at the start of a balance, equation 87.
	 * @param fieldCapacity m³/m³, 0 to 1
	 * @param content mean water content of the root zone, m³/m³, 0 to 1
	 * @param depth of the roots, m, 0 to 10
	 * @return mm, 0 for a soil that is wetter than field capacity
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static double depletion(double fieldCapacity, double content, double depth) {
		Bounds.check("field capacity", fieldCapacity, 0, 1);
		Bounds.check("water content", content, 0, 1);
		return Math.max(0, 1000 * (fieldCapacity - content) * depth(depth));
	}

	/**
	 * Part p that can be used without stress at a loss other than 5 mm a day: the note to
	 * table 22.
	 * @param atFive the fraction at 5 mm a day
	 * @param loss of the crop without stress, mm per day
	 * @return 0.1 to 0.8
	 */
	public static double fraction(double atFive, double loss) {
		return Math.max(LOWEST_FRACTION, Math.min(HIGHEST_FRACTION, atFive + 0.04 * (5 - loss)));
	}

	/**
	 * How much stress leaves of the loss of water, equation 84.
	 * @param available TAW, mm, above 0
	 * @param readily RAW, mm, 0 to below {@code available}
	 * @param depletion mm, 0 to {@code available}
	 * @return Ks, 0 to 1
	 */
	public static double stress(double available, double readily, double depletion) {
		return (depletion <= readily) ? 1 : Math.max(0, (available - depletion) / (available - readily));
	}

	/**
	 * How much salt leaves of the loss of water, equation 91; multiplied by the stress of
	 * drought, equation 92. Meant for whole seasons and for salinity up to the threshold
	 * and 50/{@code slope} more.
	 * @param salinity of the saturation extract ECe, dS/m, 0 to 100
	 * @param threshold of the crop, dS/m, 0 to 100 (table 23)
	 * @param slope loss of yield above it, % per dS/m, 0 to 100 (table 23)
	 * @param response yield response factor Ky, above 0 (table 24)
	 * @return 0 to 1
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static double saltStress(double salinity, double threshold, double slope, double response) {
		Bounds.check("salinity in dS/m", salinity, 0, 100);
		Bounds.check("threshold in dS/m", threshold, 0, 100);
		Bounds.check("slope in % per dS/m", slope, 0, 100);
		Bounds.check("yield response", response, 0.01, 10);
		double loss = slope / (100 * response) * Math.max(0, salinity - threshold);
		return Math.max(0, 1 - loss);
	}

	private static double depth(double metres) {
		return Bounds.check("depth in m", metres, 0, 10);
	}

}
