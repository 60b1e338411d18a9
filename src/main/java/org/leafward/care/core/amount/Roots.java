package org.leafward.care.core.amount;

import java.util.List;
import java.util.Set;
import org.leafward.climate.WaterBed;
import org.leafward.plants.Species;

/**
 * Plants by the depth of the roots that they are watered for, and by what they lose. The
 * depths are common practice: lawns are wetted 6 in deep, beds of flowers and vegetables
 * 12 in, shrubs and trees 12 to 18 in and more. The plant factors are those of ANSI/ASABE
 * S623 (from memory, upper figures), so that soil counts as dry rather too soon than too
 * late.
 */
public enum Roots {

	/** Lawns. */
	TURF(0.15, 0.8, Set.of("turf")),

	/** Annual flowers, vegetables and herbs, young strawberries. */
	ANNUAL(0.3, 0.9, Set.of("annual", "vegetable", "perennial-vegetable", "garlic", "strawberry")),

	/** Perennials, grasses and bulbs. */
	PERENNIAL(0.3, 0.7,
			Set.of("perennial", "spring-bulb", "tender-bulb", "ornamental-grass-cool", "ornamental-grass-warm")),

	/** Trees. */
	TREE(0.6, 0.7,
			Set.of("deciduous-shade-tree", "flowering-tree", "fruit-tree", "oak", "maple", "birch", "elm", "pine",
					"spruce-fir", "stone-fruit")),

	/** Shrubs, and whatever else there is. */
	SHRUB(WaterBed.SHRUB_ROOTS, WaterBed.SHRUB_FACTOR, Set.of());

	private final double depth;

	private final double factor;

	private final Set<String> groups;

	Roots(double depth, double factor, Set<String> groups) {
		this.depth = depth;
		this.factor = factor;
		this.groups = groups;
	}

	/**
	 * The roots of a species.
	 * @param species the species
	 * @return shrubs when it belongs to none of the others
	 */
	public static Roots of(Species species) {
		List<String> groups = species.groups();
		for (Roots roots : values()) {
			if (groups.stream().anyMatch(roots.groups::contains)) {
				return roots;
			}
		}
		return SHRUB;
	}

	/**
	 * Depth of the roots that water is to reach.
	 * @return m
	 */
	public double depthMetres() {
		return this.depth;
	}

	/**
	 * Part of the reference evapotranspiration that they lose.
	 * @return 0.7 to 0.9
	 */
	public double plantFactor() {
		return this.factor;
	}

}
