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
	void hasAtLeastNinetySpeciesInOrder() {
		assertThat(catalogue.all()).hasSizeGreaterThanOrEqualTo(90);
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

	@Test
	void evergreensAreEitherBroadleafOrNeedled() {
		assertThat(catalogue.all()).filteredOn((one) -> one.groups().contains("evergreen"))
			.allSatisfy((one) -> assertThat(one.groups()).containsAnyOf("broadleaf-evergreen", "needled-evergreen")
				.contains("woody"));
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

	/**
	 * Zones and traits against the reference table of species, which names a source for
	 * each cell that is more than common knowledge.
	 */
	@Test
	void agreesWithTheReferenceTable() throws IOException {
		List<List<String>> rows = quotedRows(Files.readAllLines(SharedData.file("knowledge/species.csv")));
		List<String> head = rows.get(0);
		int compared = 0;
		for (List<String> row : rows.subList(1, rows.size())) {
			Species species = catalogue.find(new SpeciesId(CatalogueReader.slug(row.get(0)))).orElse(null);
			if (species == null) {
				continue;
			}
			compared++;
			assertThat(row.get(head.indexOf("common_name"))).startsWith(species.commonName());
			if (species.zones() != null) {
				assertThat(species.zones().coldest() + "-" + species.zones().warmest()).as(row.get(0))
					.isEqualTo(row.get(head.indexOf("usda_zone_min")) + "-" + row.get(head.indexOf("usda_zone_max")));
			}
			String groups = row.get(head.indexOf("plant_group")) + row.get(head.indexOf("also_in_groups"));
			assertThat(species.traits().contains("thin-bark")).as("thin bark of %s", row.get(0))
				.isEqualTo(groups.contains("thin_bark_tree"));
			assertThat(species.traits().contains("fire-blight-host")).as("fire blight on %s", row.get(0))
				.isEqualTo(groups.contains("fire_blight_host"));
			if (species.traits().contains("salt-sensitive")) {
				assertThat(List.of(row.get(head.indexOf("salt_tolerance_soil")),
						row.get(head.indexOf("salt_tolerance_spray"))))
					.as("salt on %s", row.get(0))
					.contains("low");
			}
			assertThat(species.traits().contains("bacterial-leaf-scorch-host")).as("leaf scorch on %s", row.get(0))
				.isEqualTo(row.get(head.indexOf("bacterial_leaf_scorch_status")).equals("host"));
		}
		assertThat(compared).isGreaterThan(100);
	}

	private static List<List<String>> quotedRows(List<String> lines) {
		List<List<String>> rows = new ArrayList<>();
		for (String line : lines) {
			List<String> fields = new ArrayList<>();
			StringBuilder field = new StringBuilder();
			boolean quoted = false;
			for (char c : line.toCharArray()) {
				if (c == '"') {
					quoted = !quoted;
				}
				else if (c == ',' && !quoted) {
					fields.add(field.toString());
					field.setLength(0);
				}
				else {
					field.append(c);
				}
			}
			fields.add(field.toString());
			rows.add(fields);
		}
		return rows;
	}

}
