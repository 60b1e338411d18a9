package org.leafward.plants;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

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
 * @param zones where it is usually hardy; null for annuals, and where not known
 * @param habits how it grows and what it suffers from
 * @param sources where its facts come from, as far as they are not common knowledge
 */
public record Species(SpeciesId id, String botanicalName, String commonName, List<String> synonyms, List<String> groups,
		Set<String> traits, @Nullable ZoneRange zones, Habits habits, List<FactSource> sources) {

	public Species {
		synonyms = List.copyOf(synonyms);
		groups = List.copyOf(groups);
		traits = Set.copyOf(traits);
		sources = List.copyOf(sources);
	}

	/**
	 * A species without habits.
	 * @param id identifier
	 * @param botanicalName accepted botanical name
	 * @param commonName usual English name
	 * @param synonyms other names
	 * @param groups plant groups
	 * @param traits traits
	 * @param zones where it is usually hardy
	 * @param sources where its facts come from
	 */
	public Species(SpeciesId id, String botanicalName, String commonName, List<String> synonyms, List<String> groups,
			Set<String> traits, @Nullable ZoneRange zones, List<FactSource> sources) {
		this(id, botanicalName, commonName, synonyms, groups, traits, zones, Habits.UNKNOWN, sources);
	}

	/**
	 * A species without zones, habits and sources.
	 * @param id identifier
	 * @param botanicalName accepted botanical name
	 * @param commonName usual English name
	 * @param synonyms other names
	 * @param groups plant groups
	 * @param traits traits
	 */
	public Species(SpeciesId id, String botanicalName, String commonName, List<String> synonyms, List<String> groups,
			Set<String> traits) {
		this(id, botanicalName, commonName, synonyms, groups, traits, null, List.of());
	}

}
