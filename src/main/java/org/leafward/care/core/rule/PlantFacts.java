package org.leafward.care.core.rule;

import java.util.Set;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;

/**
 * What a rule may ask about a planting in a season.
 *
 * @param species its species
 * @param groups plant groups of the species
 * @param traits traits of the species
 * @param placement in the ground or in a container
 * @param wintersIndoors whether it is kept indoors in winter
 * @param saltExposed whether de-icing salt reaches it
 * @param yearsSincePlanting the season's year less the year of the season in which it was
 * planted; 0 in the season of planting, negative before
 * @param ground the site it grows on
 */
public record PlantFacts(SpeciesId species, Set<String> groups, Set<String> traits, Placement placement,
		boolean wintersIndoors, boolean saltExposed, int yearsSincePlanting, SiteFacts ground) {

	public PlantFacts {
		groups = Set.copyOf(groups);
		traits = Set.copyOf(traits);
	}

}
