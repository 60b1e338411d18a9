package org.leafward.advisories.core.reach;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.advisories.Growth;
import org.leafward.advisories.PlantChoice;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;

import static org.assertj.core.api.Assertions.assertThat;

/** Counting by hand. */
class GrowthCountTests {

	private static final UUID NORA = new UUID(0, 1);

	private static final UUID TOMAS = new UUID(0, 2);

	private static final Map<Short, Species> SPECIES = new HashMap<>(
			Map.of((short) 1, species("quercus-rubra", List.of("oak", "woody"), Set.of("scorch-host")), (short) 2,
					species("rosa", List.of("rose", "woody"), Set.of()), (short) 3,
					species("lactuca", List.of("vegetable"), Set.of())));

	private static Species species(String id, List<String> groups, Set<String> traits) {
		return new Species(new SpeciesId(id), id, id, List.of(), groups, traits);
	}

	private static Growth count(PlantChoice choice) {
		GrowthCount count = new GrowthCount(List.of("a", "b", "c"), choice, SPECIES);
		count.site(NORA, "a", new short[] { 1, 1, 2 });
		count.site(NORA, "b", new short[] { 2 });
		count.site(TOMAS, "a", new short[] { 3, 9 });
		count.site(TOMAS, "a", new short[0]);
		return count.growth();
	}

	@Test
	void everything() {
		Growth growth = count(PlantChoice.EVERYTHING);
		assertThat(growth).extracting(Growth::people, Growth::sites, Growth::plantings).containsExactly(2L, 4L, 6L);
		assertThat(growth.groups()).containsExactly(new Growth.OfGroup("woody", 2, 4), new Growth.OfGroup("oak", 1, 2),
				new Growth.OfGroup("rose", 2, 2), new Growth.OfGroup("vegetable", 1, 1));
		assertThat(growth.counties()).containsExactly(new Growth.OfCounty("a", 2, 3, 5),
				new Growth.OfCounty("b", 1, 1, 1), new Growth.OfCounty("c", 0, 0, 0));
	}

	@Test
	void byGroupTraitAndSpecies() {
		assertThat(count(new PlantChoice(Set.of("rose"), Set.of(), Set.of())))
			.extracting(Growth::people, Growth::sites, Growth::plantings)
			.containsExactly(1L, 2L, 2L);
		assertThat(count(new PlantChoice(Set.of(), Set.of("scorch-host"), Set.of("lactuca"))))
			.extracting(Growth::people, Growth::sites, Growth::plantings)
			.containsExactly(2L, 2L, 3L);
		assertThat(count(new PlantChoice(Set.of("cactus"), Set.of(), Set.of())).sites()).isZero();
	}

}
