package org.leafward.quick.core;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.measure.BadInput;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.Species;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class PlantFinderTests {

	private static final Catalogue CATALOGUE = CatalogueFixture.configured();

	/** Names as people write them, by the botanical names of the standard floras. */
	@ParameterizedTest
	@CsvSource({ "tomato, solanum-lycopersicum", "Tomatoes, solanum-lycopersicum", "tomatos, solanum-lycopersicum",
			"Acer rubrun, acer-rubrum", "red maples, acer-rubrum", "common lilac, syringa-vulgaris",
			"Syringa vulgaris, syringa-vulgaris", "bigleaf hydranga, hydrangea-macrophylla" })
	void namesWithoutDoubt(String typed, String id) {
		PlantFinder.Found found = PlantFinder.find(CATALOGUE, typed);
		assertThat(found.sure()).extracting((one) -> one.id().value()).containsExactly(id);
		assertThat(found.offers()).isEmpty();
		assertThat(found.unknown()).isEmpty();
	}

	@Test
	void severalAtATimeAndNothingIsLost() {
		PlantFinder.Found found = PlantFinder.find(CATALOGUE, "tomato, roses; frumious bandersnatch\nhydrangea,,");
		assertThat(found.sure()).hasSize(1);
		assertThat(found.offers()).extracting(PlantFinder.Offer::typed).containsExactly("roses", "hydrangea");
		assertThat(found.offers().get(0).species()).allMatch((one) -> one.groups().contains("rose"));
		assertThat(found.unknown()).singleElement().satisfies((one) -> {
			assertThat(one.typed()).isEqualTo("frumious bandersnatch");
			assertThat(one.species()).isEmpty();
		});
	}

	@Test
	void whatIsUnknownHasItsNearest() {
		PlantFinder.Found found = PlantFinder.find(CATALOGUE, "purple boxwood hedge thing");
		assertThat(found.unknown()).singleElement()
			.satisfies((one) -> assertThat(one.species()).anyMatch((each) -> each.groups().contains("boxwood")));
	}

	@Test
	void hostileTextIsRefusedAndQuick() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> PlantFinder.find(CATALOGUE, "a".repeat(10_240)))
			.withMessageContaining("10,240");
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> PlantFinder.find(CATALOGUE, "rose,".repeat(3) + "a1,a2,a3,a4,a5,a6,a7,a8,a9,b1,b2,b3"))
			.withMessageContaining("13");
		assertThat(PlantFinder.find(CATALOGUE, "<script>alert(1)</script>, %%%, \u0000").sure()).isEmpty();
	}

	@Test
	void everySpeciesLiesInOneDrawer() {
		Set<Species> seen = new HashSet<>();
		List<PlantKinds.Kind> kinds = PlantKinds.of(CATALOGUE.all());
		kinds.forEach((kind) -> kind.species().forEach((one) -> assertThat(seen.add(one)).as("%s", one).isTrue()));
		assertThat(seen).hasSameSizeAs(CATALOGUE.all());
		assertThat(kinds).allMatch((kind) -> kind.species().size() <= 60);
		assertThat(kinds).filteredOn((kind) -> kind.title().equals("Other plants"))
			.allMatch((kind) -> kind.species().size() < 20);
	}

}
