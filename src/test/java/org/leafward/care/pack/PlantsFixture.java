package org.leafward.care.pack;

import java.util.List;
import java.util.Set;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;

/** A catalogue of three species. */
final class PlantsFixture {

	static final List<Species> SPECIES = List.of(species("buxus-sempervirens", "boxwood"),
			species("buxus-microphylla", "boxwood"), species("quercus-alba", "oak"));

	static final KnownPlants KNOWN = KnownPlants.of(Set.of("boxwood", "oak"), SPECIES, Set.of("thin-bark"));

	private PlantsFixture() {
	}

	private static Species species(String id, String group) {
		return new Species(new SpeciesId(id), id, id, List.of(), List.of(group), Set.of());
	}

}
