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

	public WaterBed {
		waterings = Map.copyOf(waterings);
	}

}
