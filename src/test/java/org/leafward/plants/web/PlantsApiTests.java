package org.leafward.plants.web;

import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.plants.CatalogueFixture;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

import static org.assertj.core.api.Assertions.assertThat;

class PlantsApiTests {

	private final MockMvcTester mvc = MockMvcTester.of(new PlantsApi(CatalogueFixture.configured()));

	@Test
	void answersOneSpecies() {
		assertThat(this.mvc.get().uri("/api/v1/species/quercus-rubra")).hasStatusOk().bodyJson().isLenientlyEqualTo("""
				{
				  "id": "quercus-rubra",
				  "botanicalName": "Quercus rubra",
				  "commonName": "northern red oak",
				  "groups": ["oak", "deciduous-shade-tree", "woody"],
				  "traits": ["bacterial-leaf-scorch-host", "fall-planting-risk", "scorch-prone"],
				  "zones": {"coldest": 4, "warmest": 8},
				  "blooms": "late-spring",
				  "bloomsOn": "old-wood",
				  "light": "full-sun",
				  "tolerance": {"drought": "moderate", "soilSalt": "high", "saltSpray": "moderate"},
				  "susceptibleTo": ["bacterial-leaf-scorch", "oak-wilt", "leaf-scorch"],
				  "sources": [
				    {"fact": "host of Xylella fastidiosa", "publisher": "American Phytopathological Society"},
				    {"fact": "high tolerance of salt in soil"}
				  ]
				}
				""");
	}

	@Test
	void pagesThroughASearch() {
		assertThat(this.mvc.get().uri("/api/v1/species?search=oak&size=3&page=0")).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.items.length()", (length) -> length.assertThat().isEqualTo(3))
			.hasPathSatisfying("$.total", (total) -> total.assertThat().isEqualTo(13))
			.hasPathSatisfying("$.items[0].id", (id) -> id.assertThat().isEqualTo("hydrangea-quercifolia"));
		assertThat(this.mvc.get().uri("/api/v1/species?search=oak&size=3&page=99")).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.items.length()", (length) -> length.assertThat().isEqualTo(0));
	}

	@Test
	void listsEverythingWithoutASearch() {
		int total = CatalogueFixture.configured().all().size();
		assertThat(this.mvc.get().uri("/api/v1/species")).hasStatusOk()
			.bodyJson()
			.hasPathSatisfying("$.total", (found) -> found.assertThat().isEqualTo(total))
			.hasPathSatisfying("$.items.length()", (length) -> length.assertThat().isEqualTo(50));
	}

	@Test
	void refusesWhatIsOutOfBounds() {
		assertThat(this.mvc.get().uri("/api/v1/species?size=201")).hasFailed()
			.failure()
			.hasCauseInstanceOf(BadInput.class);
		assertThat(this.mvc.get().uri("/api/v1/species?size=0")).hasFailed()
			.failure()
			.hasCauseInstanceOf(BadInput.class);
		assertThat(this.mvc.get().uri("/api/v1/species?page=-1")).hasFailed()
			.failure()
			.hasCauseInstanceOf(BadInput.class);
		assertThat(this.mvc.get().uri("/api/v1/species?search=" + "x".repeat(81))).hasFailed()
			.failure()
			.hasCauseInstanceOf(BadInput.class);
		assertThat(this.mvc.get().uri("/api/v1/species/Not-An-Id")).hasFailed()
			.failure()
			.hasCauseInstanceOf(BadInput.class);
	}

	@Test
	void saysWhenThereIsNoSuchSpecies() {
		assertThat(this.mvc.get().uri("/api/v1/species/unheard-of")).hasFailed()
			.failure()
			.hasCauseInstanceOf(NotThere.class);
	}

}
