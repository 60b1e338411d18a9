package org.leafward.care.core.rule;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.plants.SpeciesId;

/**
 * The temperature at which plants are hurt.
 *
 * @param at for species without an entry of their own; null when each has one, or nobody
 * knows
 * @param bySpecies by species
 */
public record Hurt(@Nullable TemperatureThreshold at, Map<SpeciesId, TemperatureThreshold> bySpecies) {

	/** Nobody knows. */
	public static final Hurt UNKNOWN = new Hurt(null, Map.of());

	public Hurt {
		bySpecies = Map.copyOf(bySpecies);
	}

	/**
	 * The temperature for a species.
	 * @param species the species
	 * @return null when nobody knows
	 */
	public @Nullable TemperatureThreshold of(SpeciesId species) {
		TemperatureThreshold own = this.bySpecies.get(species);
		return (own != null) ? own : this.at;
	}

}
