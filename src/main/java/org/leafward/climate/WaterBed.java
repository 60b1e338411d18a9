package org.leafward.climate;

import java.time.LocalDate;
import java.util.Map;

/**
 * What grows where, as far as its water goes.
 *
 * @param soil texture by name, for example "silt loam"
 * @param rootDepthMetres depth of the roots, 0.01 to 5 m
 * @param plantFactor part of the reference evapotranspiration that the plants lose, 0 to
 * 2
 * @param depletionFraction part of the available water that they can use without stress,
 * 0.1 to 0.8; 0.5 serves many
 * @param waterings water given and soaked in, mm by day, 0 to 500 each
 */
public record WaterBed(String soil, double rootDepthMetres, double plantFactor, double depletionFraction,
		Map<LocalDate, Double> waterings) {

	/** Roots of shrubs and young trees, m; our choice. */
	public static final double SHRUB_ROOTS = 0.45;

	/**
	 * The upper of the factors of ANSI/ASABE S623 for woody landscape plants, 0.5 in dry
	 * and 0.7 in humid climates (from memory): soil counts as dry rather too soon than
	 * too late.
	 */
	public static final double SHRUB_FACTOR = 0.7;

	/** FAO-56, table 22, has 0.5 for many plants (from memory). */
	public static final double USUAL_DEPLETION = 0.5;

	public WaterBed {
		waterings = Map.copyOf(waterings);
	}

	/**
	 * A bed of shrubs: the one that stands for a site when none is told.
	 * @param soil texture by name
	 * @param waterings water given, mm by day
	 * @return the bed
	 */
	public static WaterBed shrubs(String soil, Map<LocalDate, Double> waterings) {
		return new WaterBed(soil, SHRUB_ROOTS, SHRUB_FACTOR, USUAL_DEPLETION, waterings);
	}

}
