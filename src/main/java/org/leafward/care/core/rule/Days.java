package org.leafward.care.core.rule;

import java.util.Map;
import org.leafward.plants.SpeciesId;

/**
 * Days after an event, the same for all plants or by species.
 *
 * @param days for species without an entry of their own, -366 to 366; negative is before
 * @param bySpecies by species
 */
public record Days(int days, Map<SpeciesId, Integer> bySpecies) {

	/** On the day itself. */
	public static final Days NONE = Days.of(0);

	public Days {
		bySpecies = Map.copyOf(bySpecies);
	}

	/**
	 * The same for all plants.
	 * @param days days after; negative is before
	 * @return the days
	 */
	public static Days of(int days) {
		return new Days(days, Map.of());
	}

	/**
	 * The days for a species.
	 * @param species the species
	 * @return days after; negative is before
	 */
	public int of(SpeciesId species) {
		return this.bySpecies.getOrDefault(species, this.days);
	}

	String words(String event) {
		if (this.bySpecies.isEmpty()) {
			return Offsets.words(this.days, event);
		}
		return "days that differ by species, counted from " + event;
	}

}
