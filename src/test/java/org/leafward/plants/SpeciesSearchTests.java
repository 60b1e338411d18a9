package org.leafward.plants;

import org.junit.jupiter.api.Test;
import org.leafward.measure.BadInput;
import org.leafward.plants.SpeciesSearch.Suggestion;
import org.leafward.support.EmptyServer;
import org.springframework.beans.factory.annotation.Autowired;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** The catalogue as it comes with the server. */
@EmptyServer
class SpeciesSearchTests {

	@Autowired
	private SpeciesSearch search;

	@Test
	void oneOrSeveralCommonOrBotanicalInEitherLanguage() {
		for (String name : new String[] { "tomato", "Tomatoes", "solanum lyc", "tomate", "tomatos", "TOMA" }) {
			assertThat(this.search.suggest(name)).as(name)
				.hasSizeBetween(1, 12)
				.extracting(Suggestion::id)
				.contains("solanum-lycopersicum");
		}
		assertThat(this.search.suggest("tomates")).filteredOn((one) -> one.id().equals("solanum-lycopersicum"))
			.singleElement()
			.extracting(Suggestion::also)
			.as("by which name it was found")
			.isEqualTo("tomate");
	}

	@Test
	void aNameWithoutDoubtNeedsNoPick() {
		assertThat(this.search.sure("buxus-sempervirens")).contains(new SpeciesId("buxus-sempervirens"));
		assertThat(this.search.sure(" Buxus sempervirens ")).contains(new SpeciesId("buxus-sempervirens"));
		assertThat(this.search.sure("tomatoes")).contains(new SpeciesId("solanum-lycopersicum"));
		assertThat(this.search.sure("tomate")).contains(new SpeciesId("solanum-lycopersicum"));
		assertThat(this.search.sure("maple")).as("many have it in their names").isEmpty();
		assertThat(this.search.sure("tom")).isEmpty();
		assertThat(this.search.sure("")).isEmpty();
		assertThat(this.search.sure("no such plant")).isEmpty();
		assertThat(this.search.sure("x".repeat(500))).isEmpty();
	}

	@Test
	void theListIsShortAndNothingFitsNothing() {
		assertThat(this.search.suggest("a")).hasSize(SpeciesSearch.MOST).doesNotHaveDuplicates();
		assertThat(this.search.suggest(" . ")).isEmpty();
		assertThat(this.search.suggest("qqqqzzzz")).isEmpty();
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.search.suggest("x".repeat(81)))
			.satisfies((ex) -> assertThat(ex.where()).isEqualTo("species"));
	}

}
