package org.leafward.plants;

import java.util.List;
import java.util.Set;

/**
 * A species of the catalogue.
 *
 * @param id identifier
 * @param botanicalName accepted botanical name
 * @param commonName usual English name
 * @param synonyms other names, botanical and common
 * @param groups the plant groups that rules can address, lower case with hyphens, most
 * particular first
 * @param traits traits that rules can address, lower case with hyphens, for example
 * {@code thin-bark}
 */
public record Species(SpeciesId id, String botanicalName, String commonName, List<String> synonyms, List<String> groups,
		Set<String> traits) {

	public Species {
		synonyms = List.copyOf(synonyms);
		groups = List.copyOf(groups);
		traits = Set.copyOf(traits);
	}

}
