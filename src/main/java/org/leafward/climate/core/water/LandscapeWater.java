package org.leafward.climate.core.water;

/** Amounts of water for planted areas. */
public final class LandscapeWater {

	/** US gallons in an inch on a square foot: 7.48052 gallons per cubic foot over 12. */
	public static final double GALLONS_PER_INCH_AND_SQUARE_FOOT = 7.48052 / 12;

	/** US gallons in a hundred cubic feet, the unit of many water bills. */
	public static final double GALLONS_PER_HUNDRED_CUBIC_FEET = 748.052;

	private LandscapeWater() {
	}

	/**
	 * Water that an area needs, in US customary units.
	 * @param inches reference evapotranspiration of the period, 0 or more
	 * @param factor plant factor, 0 to 2
	 * @param squareFeet area, 0 or more
	 * @return US gallons
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static double gallons(double inches, double factor, double squareFeet) {
		return amount(inches, factor, squareFeet) * GALLONS_PER_INCH_AND_SQUARE_FOOT;
	}

	/**
	 * Water that an area needs.
	 * @param millimetres reference evapotranspiration of the period, 0 or more
	 * @param factor plant factor, 0 to 2
	 * @param squareMetres area, 0 or more
	 * @return litres; 1 mm on 1 m² is 1 litre
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static double litres(double millimetres, double factor, double squareMetres) {
		return amount(millimetres, factor, squareMetres);
	}

	/**
	 * The landscape coefficient KL = KS x KD x KMC (University of California, landscape
	 * coefficient method; read on salinitymanagement.org).
	 * @param species factor of the plants, 0 to 2
	 * @param density factor of how densely they stand, 0 to 2
	 * @param microclimate factor of the place, 0 to 2
	 * @return the coefficient, used in the place of a plant factor
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static double coefficient(double species, double density, double microclimate) {
		return factor(species) * factor(density) * factor(microclimate);
	}

	private static double amount(double depth, double factor, double area) {
		return Bounds.check("evapotranspiration", depth, 0, 1e6) * factor(factor) * Bounds.check("area", area, 0, 1e9);
	}

	private static double factor(double factor) {
		return Bounds.check("factor", factor, 0, 2);
	}

}
