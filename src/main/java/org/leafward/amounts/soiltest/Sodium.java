package org.leafward.amounts.soiltest;

import org.leafward.amounts.Quantity;

/**
 * Sodium in the water of the soil and on its particles. Source: USDA Agriculture Handbook
 * 60, pages 25 and 26, as cited by the analytical laboratory of UC Davis and used in a
 * script of the soil survey; the handbook itself was not read.
 */
public final class Sodium {

	/** Where the formula comes from. */
	public static final String SOURCE = "ESP = 100 k/(1 + k), k = −0.0126 + 0.01475 SAR: USDA Agriculture Handbook 60, "
			+ "as cited by the analytical laboratory of UC Davis";

	private static final double START = -0.0126;

	private static final double SLOPE = 0.01475;

	private Sodium() {
	}

	/**
	 * Sodium adsorption ratio.
	 * @param sodium meq/l, 0 or more
	 * @param calcium meq/l, 0 or more
	 * @param magnesium meq/l; above 0 together with calcium
	 * @return SAR, (meq/l)^½
	 */
	public static double adsorptionRatio(double sodium, double calcium, double magnesium) {
		return sodium / Math.sqrt((calcium + magnesium) / 2);
	}

	/**
	 * Exchangeable sodium percentage in balance with a ratio.
	 * @param ratio SAR, 0 to 200
	 * @return %, 0 where the line would fall below
	 */
	public static double exchangeable(double ratio) {
		double k = START + SLOPE * Quantity.within("sar", "SAR", ratio, 0, 200);
		return Math.max(0, 100 * k / (1 + k));
	}

	/**
	 * The ratio in balance with an exchangeable sodium percentage.
	 * @param percent ESP, 0 to 70
	 * @return SAR
	 */
	public static double ratio(double percent) {
		double k = percent / (100 - Quantity.within("esp", "ESP", percent, 0, 70));
		return (k - START) / SLOPE;
	}

}
