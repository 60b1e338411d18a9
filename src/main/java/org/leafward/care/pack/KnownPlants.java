package org.leafward.care.pack;

import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.plants.Catalogue;

/**
 * The names that rules can address.
 *
 * @param groups plant groups
 * @param species ids of species
 * @param traits traits
 */
record KnownPlants(Set<String> groups, Set<String> species, Set<String> traits) {

	static KnownPlants of(Catalogue catalogue) {
		return new KnownPlants(catalogue.groups().keySet(),
				catalogue.all().stream().map((species) -> species.id().value()).collect(Collectors.toSet()),
				catalogue.traits().keySet());
	}

}
