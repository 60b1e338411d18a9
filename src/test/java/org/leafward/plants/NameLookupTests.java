package org.leafward.plants;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;

import static org.assertj.core.api.Assertions.assertThat;

class NameLookupTests {

	private static final Catalogue CATALOGUE = new PlantsConfiguration().catalogue(new KnowledgeFiles(""),
			new KnowledgeReader(), new PlantsConfiguration().plantWords(new KnowledgeFiles(""), new KnowledgeReader()));

	/**
	 * Names in English, botanical ones with cultivars as the code of nomenclature for
	 * cultivated plants writes them, and Spanish ones with the plurals of its grammar.
	 */
	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`',
			value = { "tomatoes|solanum-lycopersicum", "Acer rubrum 'Red Sunset'|acer-rubrum",
					"Acer rubrum \u2018October Glory\u2019|acer-rubrum", "red maple (Acer rubrum)|acer-rubrum",
					"arces rojos|acer-rubrum", "arce rojo|acer-rubrum", "Ajos|allium-sativum",
					"coliflores|brassica-oleracea-botrytis", "Syringa vulgaris|syringa-vulgaris",
					"Buxus sempervirens \"Suffruticosa\"|buxus-sempervirens" })
	void namesWithoutDoubt(String typed, String id) {
		NameLookup found = NameLookup.of(CATALOGUE, typed);
		assertThat(found.fitting()).extracting((one) -> one.id().value()).containsExactly(id);
		assertThat(found.sure()).isTrue();
	}

	@Test
	void namesOfSeveralAndOfNone() {
		assertThat(NameLookup.of(CATALOGUE, "roses").fitting()).hasSizeGreaterThan(1)
			.allMatch((one) -> one.groups().contains("rose"));
		// Sugar maples are called so in Spanish, all maples in English.
		assertThat(NameLookup.of(CATALOGUE, "maple").fitting()).hasSizeGreaterThan(3)
			.allMatch((one) -> one.groups().contains("maple"));
		assertThat(NameLookup.of(CATALOGUE, "tomatoes").sure()).isTrue();
		NameLookup near = NameLookup.of(CATALOGUE, "purple boxwood hedge thing");
		assertThat(near.sure()).isFalse();
		assertThat(near.fitting()).isEmpty();
		assertThat(near.near()).anyMatch((one) -> one.groups().contains("boxwood"));
		assertThat(NameLookup.withoutNear(CATALOGUE, "purple boxwood hedge thing").near()).isEmpty();
		NameLookup nothing = new NameLookup(List.of(), List.of());
		assertThat(NameLookup.of(CATALOGUE, "xyzzyq qwrtp")).isEqualTo(nothing);
		assertThat(NameLookup.of(CATALOGUE, "%%% \u0000")).isEqualTo(nothing);
	}

	@Test
	void whatIsANameAndWhatOnlyResemblesOne() {
		assertThat(NameLookup.isName(CATALOGUE, "Tomatoes")).isTrue();
		assertThat(NameLookup.isName(CATALOGUE, "roses")).isTrue();
		assertThat(NameLookup.isName(CATALOGUE, "Acer rubrum 'Red Sunset'")).isTrue();
		assertThat(NameLookup.isName(CATALOGUE, "hedge by the gate")).isFalse();
		assertThat(NameLookup.isName(CATALOGUE, "")).isFalse();
	}

}
