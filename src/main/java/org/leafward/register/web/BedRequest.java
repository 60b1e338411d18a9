package org.leafward.register.web;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.WaterBed;
import org.leafward.measure.Given;
import org.leafward.register.Site;

/**
 * The bed whose water is asked for.
 *
 * @param rootDepthMetres depth of the roots, m; 0.45 when not given
 * @param plantFactor plant factor; 0.5 when not given
 */
record BedRequest(@Nullable String rootDepthMetres, @Nullable String plantFactor) {

	/** Shrubs: roots of 0.45 m, half of the reference evapotranspiration. */
	static final BedRequest SHRUBS = new BedRequest("0.45", "0.5");

	/** Half of the water can be used without stress; serves many plants. */
	private static final double DEPLETION_FRACTION = 0.5;

	static BedRequest of(@Nullable String rootDepthMetres, @Nullable String plantFactor) {
		return new BedRequest((rootDepthMetres != null) ? rootDepthMetres : SHRUBS.rootDepthMetres(),
				(plantFactor != null) ? plantFactor : SHRUBS.plantFactor());
	}

	WaterBed toBed(Site site) {
		return new WaterBed(site.soil().words(), Given.number("rootDepthMetres", this.rootDepthMetres, "metres"),
				Given.number("plantFactor", this.plantFactor, "parts of one"), DEPLETION_FRACTION, Map.of());
	}

}
