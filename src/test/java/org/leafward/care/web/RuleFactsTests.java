package org.leafward.care.web;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.care.RulePacks;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.pack.ConfiguredPacks;
import org.leafward.pages.Formats;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;

import static org.assertj.core.api.Assertions.assertThat;

/** What the page of a rule says of it, for rules of the packs as they are. */
class RuleFactsTests {

	private static Catalogue catalogue;

	private static RulePacks packs;

	@BeforeAll
	static void load() {
		catalogue = CatalogueFixture.configured();
		packs = ConfiguredPacks.read();
	}

	private static RuleFacts facts() {
		return new RuleFacts(new WhomWords(catalogue), new Formats(0));
	}

	private static Rule rule(String reference) {
		return packs.find(reference).orElseThrow(() -> new AssertionError(reference));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "edibles/water-weekly | Worked out | missing from the root zone",
			"watering/drought-loam | Worked out | By the thickness of the trunk",
			"watering/pots-in-heat | Worked out | By the volume of the pot",
			"salt/leach-salt | Worked out | half of the salt",
			"frost-nights/cover-tender | Worked out | the plants are hurt at 32 °F (0 °C)",
			"hardening/harden-off-seedlings | Worked out | unfit days are held",
			"houseplants/step-down-indoors | Worked out | that of its window",
			"shade-and-late-frost/shade-after-canopy-loss | Worked out | cloth of each day",
			"hardening/harden-off-seedlings | Weather | Kept in on a day with a high of no more than 45 °F (7.2 °C) "
					+ "or a mean wind of 15 mph (24 km/h) or more or a high of 95 °F (35 °C) or warmer" })
	void aRuleTellsWhatIsWorkedOut(String reference, String label, String words) {
		assertThat(facts().of(rule(reference), Optional.empty())).filteredOn((fact) -> fact.label().equals(label))
			.singleElement()
			.satisfies((fact) -> assertThat(fact.words()).contains(words));
	}

	@Test
	void whatIsTheSameForAllIsNotWorkedOut() {
		assertThat(facts().of(rule("oaks/oak-no-pruning"), Optional.empty())).extracting(Fact::label)
			.doesNotContain("Worked out");
	}

	/** The figures are those of the packs, checked against the crop table there. */
	@Test
	void temperaturesOfSpeciesAreTold() {
		assertThat(lines("direct-sowing/sow-tender")).anySatisfy((line) -> assertThat(line).startsWith("sweet corn")
			.contains("no sooner than the soil warming to 50 °F"));
		assertThat(lines("crops/set-out-very-tender")).anySatisfy((line) -> assertThat(line).startsWith("pepper")
			.contains("nights warming to 55 °F (12.8 °C) and the soil warming to 65 °F"));
		assertThat(lines("frost-nights/cover-very-tender"))
			.anySatisfy((line) -> assertThat(line).startsWith("tomato").contains("hurt at 33 °F"));
		assertThat(lines("hardening/harden-off-seedlings"))
			.anySatisfy((line) -> assertThat(line).startsWith("tomato").contains("no night outside below 50 °F"));
	}

	private static List<String> lines(String reference) {
		return facts().bySpecies(rule(reference)).stream().map((fact) -> fact.label() + ": " + fact.words()).toList();
	}

}
