package org.leafward.care.core.rule;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.plants.SpeciesId;

/**
 * What makes a ramp one of light: its steps are worked out from the light in which each
 * planting stands to that of its site, and days with unfit weather are held.
 *
 * @param way which way it goes
 * @param lowestNight on the way out, the coldest night that the plants spend outside, for
 * species without an entry of their own; null when each has one
 * @param bySpecies by species
 */
public record RampLight(Way way, @Nullable TemperatureThreshold lowestNight,
		Map<SpeciesId, TemperatureThreshold> bySpecies) {

	/** Which way a ramp goes. */
	public enum Way {

		/** From indoors to the place outside, held by weather. */
		OUT,

		/** From the summer place to indoors. */
		IN,

		/** Cloth that is thinned out over plants that lost their shade. */
		CLOTH

	}

	public RampLight {
		bySpecies = Map.copyOf(bySpecies);
	}

	/**
	 * The coldest night outside.
	 * @param species of which species
	 * @return null when the rule doesn't say
	 */
	public @Nullable TemperatureThreshold lowestNight(SpeciesId species) {
		TemperatureThreshold own = this.bySpecies.get(species);
		return (own != null) ? own : this.lowestNight;
	}

}
