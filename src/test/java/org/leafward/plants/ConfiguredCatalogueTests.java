package org.leafward.plants;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;

/** The catalogue that comes with the server. */
class ConfiguredCatalogueTests {

	private static Catalogue catalogue;

	@BeforeAll
	static void load() {
		catalogue = CatalogueFixture.configured();
	}

	@Test
	void listsTwoHundredEightyEightSpeciesInOrder() {
		assertThat(catalogue.all()).hasSize(289);
		assertThat(catalogue.all()).extracting((species) -> species.commonName().toLowerCase(Locale.ROOT)).isSorted();
	}

	@Test
	void everyGroupAndTraitIsUsedAndHasWords() {
		Set<String> groups = catalogue.all()
			.stream()
			.flatMap((one) -> one.groups().stream())
			.collect(Collectors.toSet());
		Set<String> traits = catalogue.all()
			.stream()
			.flatMap((one) -> one.traits().stream())
			.collect(Collectors.toSet());
		assertThat(groups).isEqualTo(catalogue.groups().keySet());
		assertThat(traits).isEqualTo(catalogue.traits().keySet());
		assertThat(catalogue.groups()).containsEntry("boxwood", "Boxwood");
	}

	/** A live oak keeps its leaves, and is cared for as an oak. */
	@Test
	void evergreensAreEitherBroadleafOrNeedled() {
		assertThat(catalogue.all()).filteredOn((one) -> one.groups().contains("evergreen"))
			.filteredOn((one) -> !one.groups().contains("oak"))
			.allSatisfy((one) -> assertThat(one.groups()).containsAnyOf("broadleaf-evergreen", "needled-evergreen")
				.contains("woody"));
	}

	@Test
	void everyTroubleIsUsedAndHasWords() {
		assertThat(
				catalogue.all().stream().flatMap((one) -> one.habits().troubles().stream()).collect(Collectors.toSet()))
			.isEqualTo(catalogue.troubles().keySet());
		assertThat(catalogue.troubles()).containsEntry("oak-wilt", "Oak wilt");
	}

	/**
	 * A group is a name for readers of rules; who belongs to the fine one belongs to the
	 * coarse one.
	 */
	@ParameterizedTest
	@CsvSource({ "boxwood, evergreen", "holly, evergreen", "pine, needled-evergreen", "spruce-fir, needled-evergreen",
			"oak, woody", "maple, woody", "stone-fruit, fruit-tree", "grafted-rose, rose", "rose-repeat, rose",
			"rose-once, rose", "cool-season-turf, turf", "warm-season-turf, turf", "vegetable-hardy, vegetable",
			"vegetable-half-hardy, vegetable", "vegetable-tender, vegetable", "vegetable-very-tender, vegetable",
			"annual-hardy, annual", "annual-half-hardy, annual", "annual-tender, annual", "annual-very-tender, annual",
			"perennial-vegetable, vegetable", "citrus, houseplant", "orchid, houseplant", "succulent, houseplant",
			"houseplant-cool, houseplant" })
	void fineGroupsLieWithinCoarseOnes(String fine, String coarse) {
		assertThat(catalogue.all()).filteredOn((one) -> one.groups().contains(fine))
			.isNotEmpty()
			.allSatisfy((one) -> assertThat(one.groups()).contains(coarse));
	}

	/** Common knowledge, as in any nursery list; zones are USDA zones. */
	@ParameterizedTest
	@CsvSource({ "buxus-sinica-var-insularis, Korean boxwood, boxwood, 4, 9",
			"picea-glauca-conica, dwarf Alberta spruce, spruce-fir, 3, 6", "quercus-rubra, northern red oak, oak, 4, 8",
			"hydrangea-macrophylla, bigleaf hydrangea, hydrangea-old-wood, 6, 9",
			"gleditsia-triacanthos-f-inermis, thornless honeylocust, deciduous-shade-tree, 3, 8",
			"ficus-benjamina, weeping fig, houseplant, 10, 12" })
	void knowsItsPlants(String id, String commonName, String group, int coldest, int warmest) {
		Species species = catalogue.find(new SpeciesId(id)).orElseThrow();
		assertThat(species.commonName()).isEqualTo(commonName);
		assertThat(species.groups()).contains(group);
		assertThat(species.zones()).isEqualTo(new ZoneRange(coldest, warmest));
	}

}
