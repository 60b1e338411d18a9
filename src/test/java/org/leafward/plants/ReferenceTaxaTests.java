package org.leafward.plants;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The catalogue against the reference tables of species and crops, which name a source
 * for each cell that is more than common knowledge.
 */
class ReferenceTaxaTests {

	/** Names of groups there whose name here is more than a change of underscores. */
	private static final Map<String, String> GROUPS = Map.of("all_evergreen", "evergreen", "woody_all", "woody",
			"rhododendron_azalea", "rhododendron", "rose_grafted", "grafted-rose", "turf_all", "turf",
			"citrus_container", "citrus", "transplant_all", "transplant");

	private static final Map<String, String> TRAITS = Map.of("thin_bark_tree", "thin-bark", "fall_hazard_tree",
			"fall-planting-risk", "bleeder_tree", "bleeder", "scorch_prone_tree", "scorch-prone", "chlorosis_host",
			"chlorosis-prone", "shade_plant", "shade-loving", "verticillium_host", "verticillium-host",
			"anthracnose_host", "anthracnose-host", "fire_blight_host", "fire-blight-host");

	/** A species, the place where a planting stands, and what reaches it. */
	private static final Set<String> NO_GROUP = Set.of("pieris", "container_plant", "salt_exposed");

	private static List<Map<String, String>> rows;

	private static Catalogue catalogue;

	@BeforeAll
	static void load() {
		rows = ReferenceTaxa.rows("knowledge/species.csv");
		catalogue = CatalogueFixture.configured();
	}

	private static Species named(Map<String, String> row) {
		return catalogue.search(row.get("accepted_botanical_name"), 1).get(0);
	}

	@Test
	void everyTaxonIsFoundByBothItsNames() {
		assertThat(rows).hasSize(240);
		assertThat(rows.stream().map(ReferenceTaxaTests::named).distinct()).hasSize(240);
		assertThat(rows).allSatisfy((row) -> {
			Species species = named(row);
			assertThat(names(species)).contains(NameSearch.fold(row.get("accepted_botanical_name")));
			String common = withoutRemark(row.get("common_name"));
			assertThat(catalogue.search(common, 3)).as(common).contains(species);
		});
	}

	/** "fox grape (Concord type)" is called fox grape. */
	private static String withoutRemark(String name) {
		return name.replaceAll(" \\(.*", "");
	}

	private static List<String> names(Species species) {
		List<String> names = new ArrayList<>(species.synonyms());
		names.add(species.botanicalName());
		names.add(species.commonName());
		return names.stream().map(NameSearch::fold).toList();
	}

	/**
	 * A caladium is lifted before the nights turn cold, so it stands with the warm bulbs.
	 */
	@Test
	void everyTaxonIsInItsGroupsAndHasItsTraits() {
		assertThat(rows).allSatisfy((row) -> {
			Species species = named(row);
			assertThat(species.groups()).isNotEmpty();
			for (String group : (row.get("plant_group") + "; " + row.get("also_in_groups")).split("; *")) {
				if (TRAITS.containsKey(group)) {
					assertThat(species.traits()).contains(TRAITS.get(group));
				}
				else if (!NO_GROUP.contains(group) && !species.commonName().equals("caladium")) {
					assertThat(species.groups()).contains(GROUPS.getOrDefault(group, group.replace('_', '-')));
				}
			}
		});
	}

	@Test
	void hostsAreThoseOfTheTableAndNoOthers() {
		assertThat(rows).allSatisfy((row) -> {
			Set<String> traits = named(row).traits();
			String groups = row.get("plant_group") + row.get("also_in_groups");
			assertThat(traits.contains("thin-bark")).isEqualTo(groups.contains("thin_bark_tree"));
			assertThat(traits.contains("fire-blight-host")).isEqualTo(groups.contains("fire_blight_host"));
			assertThat(traits.contains("bacterial-leaf-scorch-host"))
				.isEqualTo(row.get("bacterial_leaf_scorch_status").equals("host"));
			if (traits.contains("salt-sensitive")) {
				assertThat(List.of(row.get("salt_tolerance_soil"), row.get("salt_tolerance_spray"))).contains("low");
			}
		});
	}

	@Test
	void habitsAreThoseOfTheTable() {
		assertThat(rows).allSatisfy((row) -> {
			Species species = named(row);
			Habits habits = species.habits();
			ZoneRange zones = species.zones();
			assertThat((zones != null) ? zones.coldest() + "-" + zones.warmest() : "n/a-n/a")
				.isEqualTo(row.get("usda_zone_min") + "-" + row.get("usda_zone_max"));
			assertThat(List.of(word(habits.tolerance().drought()), word(habits.tolerance().soilSalt()),
					word(habits.tolerance().saltSpray())))
				.containsExactly(row.get("drought_tolerance"), row.get("salt_tolerance_soil"),
						row.get("salt_tolerance_spray"));
			if (habits.bloomsOn() != null) {
				assertThat(row.get("blooms_on"))
					.isEqualTo((habits.bloomsOn() == BloomsOn.BOTH) ? "old and new wood" : word(habits.bloomsOn()));
			}
			if (habits.blooms() != null && habits.blooms() != BloomTime.ALL_YEAR) {
				assertThat(word(habits.blooms())).isEqualTo(row.get("bloom_time"));
			}
			if (row.get("typical_use").contains("invasive")) {
				assertThat(habits.caution()).contains("nvasive");
			}
			if (row.get("typical_use").contains("toxic")) {
				assertThat(habits.caution()).contains("poison");
			}
		});
	}

	private static String word(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	@Test
	void everyCropIsThereWithItsFrostClass() {
		List<Map<String, String>> crops = ReferenceTaxa.rows("knowledge/crop-timing.csv");
		assertThat(crops).hasSize(54).allSatisfy((crop) -> {
			Species species = catalogue.search(crop.get("botanical_name"), 1).get(0);
			String name = withoutRemark(crop.get("crop"));
			assertThat(catalogue.search(name, 3)).as(name).contains(species);
			String kind = crop.get("kind").startsWith("vegetable") ? "vegetable" : "annual";
			assertThat(species.groups()).contains(kind, kind + "-" + crop.get("frost_class").replace(' ', '-'));
			assertThat(species.groups().contains("transplant")).as("%s raised indoors", name)
				.isEqualTo(!crop.get("weeks_indoors_min").isEmpty());
		});
	}

}
