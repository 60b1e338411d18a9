package org.leafward.care.pack;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.CalendarAnchor;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.Grade;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PlantFacts;
import org.leafward.care.core.rule.PlantingDateAnchor;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.care.core.rule.Span;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilTexture;

import static org.assertj.core.api.Assertions.assertThat;

/** The packs that come with the server. */
class ConfiguredPacksTests {

	private static final SiteFacts LOAM = new SiteFacts("US-MI", "Washtenaw", SoilTexture.LOAM,
			Set.of(SiteFeature.values()));

	private static Catalogue catalogue;

	private static LoadedRulePacks packs;

	@BeforeAll
	static void load() {
		catalogue = CatalogueFixture.configured();
		packs = new LoadedRulePacks(new KnowledgeFiles(""), new KnowledgeReader(), catalogue);
	}

	private static List<Rule> rules() {
		return packs.all().stream().flatMap((pack) -> pack.rules().stream()).toList();
	}

	@Test
	void hasEnoughRulesOfEveryKind() {
		assertThat(rules()).hasSizeGreaterThanOrEqualTo(36);
		assertThat(rules()).extracting(Rule::kind).contains(TaskKind.values());
		assertThat(packs.all()).extracting(RulePack::id).isSorted().doesNotHaveDuplicates();
	}

	@Test
	void everyTaskThatFallsIntoAHoldOffKeepsDaysOrSaysThatItGoesBefore() {
		assertThat(packs.contradictions()).allSatisfy((one) -> assertThat(one.settled() || !one.never()).isTrue())
			.extracting((one) -> one.task() + " " + one.holdOff())
			.doesNotHaveDuplicates();
	}

	@Test
	void everyRuleStandsOnASourceAndSaysHowFirmly() {
		assertThat(rules()).allSatisfy((rule) -> {
			assertThat(rule.sources()).isNotEmpty();
			assertThat(rule.sources()).allSatisfy((source) -> {
				if (source.grade() == Grade.READ_IN_SOURCE) {
					assertThat(source.address()).startsWith("http");
					assertThat(source.publisher()).isNotBlank();
				}
			});
		});
	}

	@Test
	void titlesFitACalendarAndTextsAreWholeSentences() {
		assertThat(rules()).allSatisfy((rule) -> {
			assertThat(rule.title()).hasSizeLessThanOrEqualTo(60).doesNotEndWith(".");
			assertThat(rule.text().what()).endsWith(".");
			assertThat(rule.text().why()).endsWith(".");
			assertThat(rule.text().otherwise()).endsWith(".");
		});
	}

	@Test
	void hangsOnLocalEventsAndNotOnTheCalendar() {
		List<Anchor> anchors = rules().stream().flatMap((rule) -> anchors(rule).stream()).toList();
		assertThat(anchors).filteredOn(CalendarAnchor.class::isInstance).hasSizeLessThanOrEqualTo(4);
		assertThat(anchors).filteredOn(MarkerAnchor.class::isInstance).hasSizeGreaterThan(80);
	}

	private static List<Anchor> anchors(Rule rule) {
		if (rule.timing() instanceof DayByDay days) {
			return List.of(days.from(), days.to());
		}
		return (rule.timing() instanceof Span span) ? List.of(span.from(), span.to())
				: List.of(((Ramp) rule.timing()).anchor());
	}

	@Test
	void everySpeciesHasSomeCare() {
		assertThat(catalogue.all())
			.filteredOn((species) -> plantings(species).allMatch((one) -> references(one).isEmpty()))
			.extracting((species) -> species.id().value())
			.isEmpty();
	}

	@Test
	void everyRuleConcernsSomePlantingOrSite() {
		Set<String> reached = catalogue.all()
			.stream()
			.flatMap(ConfiguredPacksTests::plantings)
			.flatMap((one) -> references(one).stream())
			.collect(Collectors.toSet());
		assertThat(packs.all()).allSatisfy((pack) -> assertThat(pack.rules())
			.filteredOn((rule) -> !rule.concern().appliesTo(LOAM) && !reached.contains(pack.reference(rule)))
			.extracting(pack::reference)
			.isEmpty());
	}

	@Test
	void aPlantThatWintersIndoorsIsNeverAskedToStandOutsideInWinter() {
		Species fig = catalogue.find(new SpeciesId("ficus-carica")).orElseThrow();
		PlantFacts facts = new PlantFacts(fig.id(), Set.copyOf(fig.groups()), fig.traits(), Placement.CONTAINER, true,
				false, 2, LOAM);
		assertThat(references(facts)).containsExactlyInAnyOrder("houseplants/harden-off-outdoors",
				"houseplants/step-down-indoors", "houseplants/bring-in", "houseplants/water-less-in-winter",
				"watering/pots-in-heat", "watering/flush-pots");
	}

	@Test
	void aBoxwoodByTheRoadGetsWhatABoxwoodByTheRoadNeeds() {
		Species boxwood = catalogue.find(new SpeciesId("buxus-sempervirens")).orElseThrow();
		PlantFacts facts = new PlantFacts(boxwood.id(), Set.copyOf(boxwood.groups()), boxwood.traits(),
				Placement.GROUND, false, true, 3, LOAM);
		assertThat(references(facts))
			.contains("evergreens/no-late-pruning", "evergreens/fall-deep-watering", "evergreens/final-soak",
					"evergreens/winter-watering", "evergreens/rinse-salt-spray", "salt/raise-salt-screen",
					"salt/leach-salt", "boxwood/last-light-trim")
			.doesNotContain("evergreens/hang-burlap", "evergreens/potted-evergreens", "oaks/oak-no-pruning",
					"houseplants/bring-in", "new-plantings/water-second-season");
	}

	@Test
	void hardeningOffTakesTwoWeeksAndEndsTheDayBeforePlanting() {
		Ramp ramp = (Ramp) packs.find("hardening/harden-off-seedlings").orElseThrow().timing();
		assertThat(ramp.days()).isEqualTo(14);
		assertThat(ramp.endsAtAnchor()).isTrue();
		assertThat(ramp.anchor()).isEqualTo(new PlantingDateAnchor(-1));
		assertThat(ramp.light()).as("hours and shade follow the light of each planting").isNotNull();
		assertThat(ramp.stepOn(1).place()).contains("shade");
		assertThat(ramp.stepOn(14).place()).contains("day and night");
	}

	@Test
	void fingerprintIsStableAndRulesAreFoundByReference() {
		LoadedRulePacks again = new LoadedRulePacks(new KnowledgeFiles(""), new KnowledgeReader(), catalogue);
		assertThat(again.fingerprint()).isEqualTo(packs.fingerprint()).matches("[0-9a-f]{64}");
		assertThat(packs.find("evergreens/no-such-rule")).isEmpty();
		Set<String> references = new HashSet<>();
		packs.all().forEach((pack) -> pack.rules().forEach((rule) -> references.add(pack.reference(rule))));
		assertThat(references).hasSameSizeAs(rules()).allMatch((one) -> packs.find(one).isPresent());
	}

	private static Stream<PlantFacts> plantings(Species species) {
		return Stream.of(Placement.values())
			.flatMap((placement) -> Stream.of(true, false)
				.flatMap((indoors) -> Stream.of(true, false)
					.flatMap((salt) -> Stream.of(SoilTexture.SAND, SoilTexture.LOAM, SoilTexture.CLAY)
						.flatMap((soil) -> Stream.of(0, 1, 3, 6)
							.map((years) -> new PlantFacts(species.id(), Set.copyOf(species.groups()), species.traits(),
									placement, indoors, salt, years,
									new SiteFacts("US-MI", "Washtenaw", soil, Set.of())))))));
	}

	private static Set<String> references(PlantFacts facts) {
		return packs.all()
			.stream()
			.flatMap((pack) -> pack.rules()
				.stream()
				.filter((rule) -> rule.concern().appliesTo(facts))
				.map(pack::reference))
			.collect(Collectors.toCollection(TreeSet::new));
	}

}
