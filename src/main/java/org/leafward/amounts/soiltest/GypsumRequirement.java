package org.leafward.amounts.soiltest;

/**
 * Gypsum that puts calcium in the place of sodium, by weight of equivalents: one of
 * gypsum for each of sodium.
 */
public final class GypsumRequirement {

	/** Grams of an equivalent: half a mole of CaSO4 with two of water, 172.17 g. */
	public static final double GRAMS_PER_EQUIVALENT = 86.085;

	/**
	 * Mass of a cubic metre of soil, Mg: the 4,000,000 lb of an acre-foot that tables of
	 * amendments are made with (USDA Agriculture Handbook 60, from memory).
	 */
	public static final double USUAL_DENSITY = 1.47;

	/** Calcium that passes without meeting sodium: a quarter more is spread. */
	public static final double SURPLUS = 1.25;

	/** Where it comes from. */
	public static final String SOURCE = "mass balance 0.0086 F Ds ρ CEC (ESPi − ESPf), read in a copy of Oster’s "
			+ "equation; a quarter more: Ali, Practices of Irrigation and On-farm Water Management, example 8.7, read; "
			+ "4,000,000 lb of soil in an acre-foot from memory";

	private GypsumRequirement() {
	}

	/**
	 * Sodium to replace.
	 * @param exchange CEC, cmol/kg
	 * @param now ESP, %
	 * @param wanted ESP, %
	 * @return cmol/kg, the same as meq/100 g; 0 where there is no more than wanted
	 */
	public static double sodium(double exchange, double now, double wanted) {
		return Math.max(0, exchange * (now - wanted) / 100);
	}

	/**
	 * Pure gypsum without any surplus.
	 * @param sodium to replace, cmol/kg
	 * @param depth of soil, m
	 * @param density of soil, Mg/m³
	 * @return kg/m²; ten times that is tonnes a hectare
	 */
	public static double pure(double sodium, double depth, double density) {
		double soil = depth * density * 1000;
		return sodium / 100 * soil * GRAMS_PER_EQUIVALENT / 1000;
	}

	/**
	 * Gypsum to spread.
	 * @param pure pure gypsum, kg/m²
	 * @param purity share of gypsum in what is spread, above 0 to 1
	 * @return kg/m²
	 */
	public static double spread(double pure, double purity) {
		return pure * SURPLUS / purity;
	}

}
