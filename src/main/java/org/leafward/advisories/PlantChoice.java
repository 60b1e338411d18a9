package org.leafward.advisories;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;

/**
 * Which plants are concerned: those of any of the groups, with any of the traits, or of
 * any of the species. Without any it means everybody, whatever they grow.
 *
 * @param groups plant groups of the catalogue
 * @param traits traits of the catalogue
 * @param species identifiers of species
 */
public record PlantChoice(Set<String> groups, Set<String> traits, Set<String> species) {

	/** Everybody, whatever they grow. */
	public static final PlantChoice EVERYTHING = new PlantChoice(Set.of(), Set.of(), Set.of());

	public PlantChoice {
		groups = Set.copyOf(groups);
		traits = Set.copyOf(traits);
		species = Set.copyOf(species);
	}

	/**
	 * Whether it leaves nobody out.
	 * @return true without group, trait and species
	 */
	public boolean everything() {
		return this.groups.isEmpty() && this.traits.isEmpty() && this.species.isEmpty();
	}

	/**
	 * Whether a species is concerned.
	 * @param one the species
	 * @return true for all where nothing is chosen
	 */
	public boolean concerns(Species one) {
		return everything() || this.species.contains(one.id().value())
				|| one.groups().stream().anyMatch(this.groups::contains)
				|| one.traits().stream().anyMatch(this.traits::contains);
	}

	/**
	 * The species that are concerned.
	 * @param all the catalogue
	 * @return their identifiers
	 */
	public Set<SpeciesId> among(Collection<Species> all) {
		return all.stream().filter(this::concerns).map(Species::id).collect(Collectors.toCollection(HashSet::new));
	}

}
