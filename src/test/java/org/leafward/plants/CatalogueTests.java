package org.leafward.plants;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

class CatalogueTests {

	private final Catalogue catalogue = new Catalogue(
			List.of(species("quercus-rubra", "Quercus rubra", "northern red oak"),
					species("acer-rubrum", "Acer rubrum", "red maple", "swamp maple"),
					species("taxus-x-media", "Taxus x media", "Anglo-Japanese yew"),
					species("cornus-mas", "Cornus mas", "cornelian cherry")),
			Map.of("oak", "Oaks"), Map.of());

	private static Species species(String id, String botanicalName, String commonName, String... synonyms) {
		return new Species(new SpeciesId(id), botanicalName, commonName, List.of(synonyms), List.of("woody"), Set.of());
	}

	@Test
	void listsByCommonNameWithoutRegardToCase() {
		assertThat(this.catalogue.all()).extracting(Species::commonName)
			.containsExactly("Anglo-Japanese yew", "cornelian cherry", "northern red oak", "red maple");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			RED     | acer-rubrum,quercus-rubra
			swamp   | acer-rubrum
			rubr    | quercus-rubra,acer-rubrum
			japan   | taxus-x-media
			cor     | cornus-mas
			orn     | cornus-mas
			beech   |
			""")
	void findsByAnyNameBeginningsFirst(String text, String ids) {
		assertThat(this.catalogue.search(text, 10)).extracting((one) -> one.id().value())
			.containsExactlyElementsOf((ids != null) ? List.of(ids.split(",")) : List.of());
	}

	/** Slips rank after what was meant to the letter; short words must be right. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			cornelain       | cornus-mas
			mapel           | acer-rubrum
			mple            |
			maplle          | acer-rubrum
			querqus         | quercus-rubra
			cornalien chery | cornus-mas
			cornalian cherry| cornus-mas
			oak red         | quercus-rubra
			rubra oak       |
			ANGLO japanese  | taxus-x-media
			anglo-japanese yew | taxus-x-media
			taxus \u00d7 media   | taxus-x-media
			qu\u00e9rcus rubra   | quercus-rubra
			rubrum          | acer-rubrum
			""")
	void forgivesSlips(String text, String ids) {
		assertThat(this.catalogue.search(text, 10)).extracting((one) -> one.id().value())
			.containsExactlyElementsOf((ids != null) ? List.of(ids.split(",")) : List.of());
	}

	/**
	 * Known distances: kitten and sitting are three apart (Wagner and Fischer's textbook
	 * pair); ca and abc are three apart by optimal string alignment, two by the
	 * unrestricted one (Boytsov 2011).
	 */
	@ParameterizedTest
	@CsvSource({ "kitten, sitting, 3", "ca, abc, 3", "maple, mapel, 1", "acer, acer, 0", "oak, '', 3" })
	void countsSlips(String one, String other, int distance) {
		assertThat(NameSearch.distance(one, other)).isEqualTo(distance);
		assertThat(NameSearch.distance(other, one)).isEqualTo(distance);
	}

	@Test
	void searchIsBounded() {
		assertThat(this.catalogue.search("", 2)).hasSize(2);
		assertThat(this.catalogue.search("", 1_000_000)).hasSize(4);
		assertThat(this.catalogue.search("", -1)).hasSize(1);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			Buxus sinica var. insularis | buxus-sinica-var-insularis
			Picea glauca 'Conica'       | picea-glauca-conica
			Taxus \u00d7 media               | taxus-x-media
			Rosa Shrub (Knock Out type) | rosa-shrub-knock-out-type
			Asa\u00ef palm                   | asai-palm
			""", quoteCharacter = '"')
	void derivesIdsFromBotanicalNames(String name, String id) {
		assertThat(EntryReader.slug(name)).isEqualTo(id);
		assertThat(new SpeciesId(id).value()).isEqualTo(id);
	}

	@Test
	void reportsWhatTheSchemaCantSee() {
		String one = """
				title: One
				groups: {oak: Oaks}
				species:
				  - {name: Quercus alba, common: white oak, groups: [oak, woody], traits: [thick-bark]}
				""";
		String two = """
				title: Two
				groups: {woody: Woody plants}
				troubles: {oak-wilt: Oak wilt}
				references: {}
				species:
				  - {name: Quercus alba, common: white oak, groups: [oak]}
				  - {name: Quercus robur, common: English oak, groups: [oak], zones: {from: 8, to: 5}}
				  - {name: Quercus rubra, common: red oak, groups: [oak], susceptible-to: [oak-wilt, gout], sources: [{fact: host, reference: some-list}]}
				""";
		BrokenKnowledge broken = catchThrowableOfType(BrokenKnowledge.class,
				() -> new CatalogueReader(new KnowledgeReader())
					.read(List.of(KnowledgeFile.of("plants/one.yaml", one), KnowledgeFile.of("plants/two.yaml", two))));
		assertThat(broken.problems()).extracting(Problem::words)
			.containsExactly(
					"plants/one.yaml:4:76: there is no trait 'thick-bark'; use one that is defined under 'traits', or define it there",
					"plants/two.yaml:6:12: 'Quercus alba' is in the catalogue twice; remove one of the two entries",
					"plants/two.yaml:7:70: the zones end before they begin; write the coldest zone as 'from'",
					"plants/two.yaml:8:86: there is no trouble 'gout'; use one that is defined under 'troubles', or define it there",
					"plants/two.yaml:8:127: there is no reference 'some-list'; use one that is defined under 'references', or define it there");
	}

	@Test
	void schemaMistakesStopTheCatalogueToo() {
		assertThatExceptionOfType(BrokenKnowledge.class)
			.isThrownBy(() -> new CatalogueReader(new KnowledgeReader()).read(List.of(KnowledgeFile.of("plants/a.yaml",
					"title: Oaks\nspecies:\n  - {name: Quercus alba, groups: []}\n"))))
			.satisfies((broken) -> assertThat(broken.problems()).extracting(Problem::words)
				.containsExactly("plants/a.yaml:3:5: 'common' is missing; add 'common': the usual English name",
						"plants/a.yaml:3:34: the list is too short; write at least 1"));
	}

}
