package org.leafward.care.pack;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.leafward.care.core.rule.Concern;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;

/**
 * The names that rules can address.
 *
 * @param groups plant groups
 * @param bySpecies the species by id
 * @param traits traits
 */
record KnownPlants(Set<String> groups, Map<String, Species> bySpecies, Set<String> traits) {

	static KnownPlants of(Catalogue catalogue) {
		return of(catalogue.groups().keySet(), catalogue.all(), catalogue.traits().keySet());
	}

	static KnownPlants of(Set<String> groups, Collection<Species> species, Set<String> traits) {
		return new KnownPlants(groups,
				species.stream().collect(Collectors.toMap((one) -> one.id().value(), Function.identity())), traits);
	}

	Set<String> species() {
		return this.bySpecies.keySet();
	}

	/** The ids of the species that a concern can be about. */
	Set<String> of(Concern concern) {
		return this.bySpecies.values()
			.stream()
			.filter(concern::addresses)
			.map((species) -> species.id().value())
			.collect(Collectors.toSet());
	}

}
