package org.leafward.plants.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.plants.FactSource;
import org.leafward.plants.Species;
import org.leafward.plants.ZoneRange;

/**
 * A species in the API.
 *
 * @param id identifier
 * @param botanicalName accepted botanical name
 * @param commonName usual English name
 * @param synonyms other names
 * @param groups plant groups, most particular first
 * @param traits traits, sorted
 * @param zones USDA hardiness zones; null where not known
 * @param sources where traits come from
 */
record SpeciesView(String id, String botanicalName, String commonName, List<String> synonyms, List<String> groups,
		List<String> traits, @Nullable ZoneRange zones, List<FactSource> sources) {

	static SpeciesView of(Species species) {
		return new SpeciesView(species.id().value(), species.botanicalName(), species.commonName(), species.synonyms(),
				species.groups(), species.traits().stream().sorted().toList(), species.zones(), species.sources());
	}

}
