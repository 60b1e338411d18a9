package org.leafward.care.pack;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PlantingDateAnchor;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.Span;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The packs about crops against the table of crop timing of the horticultural fact base
 * (54 vegetables, herbs and annual flowers; Colorado State University Extension
 * GardenNotes 720 and the lists named beside each crop there). Days count from the middle
 * date of the last freeze at 32 °F.
 */
class CropPacksTests {

	private static final int WEEKS_FEWEST = 4;

	private static final int WEEKS_MOST = 5;

	private static final int SET_OUT_FROM = 8;

	private static final int SET_OUT_TO = 9;

	private static final int SOW_FROM = 10;

	private static final int CLASS = 3;

	private static final int SPROUTS = 11;

	private static final int SOIL = 12;

	private static final int NIGHT = 13;

	private static final int COVER = 15;

	private static Catalogue catalogue;

	private static LoadedRulePacks packs;

	@BeforeAll
	static void load() {
		catalogue = CatalogueFixture.configured();
		packs = new LoadedRulePacks(new KnowledgeFiles(""), new KnowledgeReader(), catalogue);
	}

	private static List<String[]> crops() {
		return SharedData.rows(SharedData.file("knowledge/crop-timing.csv"));
	}

	private static Species species(String[] crop) {
		String id = crop[1].replace("spp.", "erecta").toLowerCase(Locale.ROOT).replace(' ', '-');
		return catalogue.find(new SpeciesId(id)).orElseThrow(() -> new AssertionError(id));
	}

	/** The one rule of a pack, by the beginning of its name, that is for a crop. */
	private static Rule rule(String pack, String beginning, Species crop) {
		List<Rule> found = rules(pack, beginning).filter((rule) -> rule.concern().addresses(crop)).toList();
		assertThat(found).as("%s/%s of %s", pack, beginning, crop.id()).hasSize(1);
		return found.get(0);
	}

	private static Stream<Rule> rules(String pack, String beginning) {
		return packs.all()
			.stream()
			.filter((one) -> one.id().equals(pack))
			.map(RulePack::rules)
			.flatMap(List::stream)
			.filter((rule) -> rule.id().startsWith(beginning));
	}

	private static int days(Anchor anchor, Species crop) {
		if (anchor instanceof PlantingDateAnchor planting) {
			return planting.days().of(crop.id());
		}
		MarkerAnchor marker = (MarkerAnchor) anchor;
		assertThat(marker.marker().code()).isEqualTo("last-spring-freeze 32F p50");
		return marker.days().of(crop.id());
	}

	private static int days(Rule rule, Function<Span, Anchor> end, Species crop) {
		return days(end.apply((Span) rule.timing()), crop);
	}

	private static int opens(Rule rule) {
		assertThat(rule.timing()).isInstanceOf(DayByDay.class);
		assertThat(rule.weather().opens()).hasSize(1);
		assertThat(rule.weather().opens().get(0).state()).isEqualTo("low-ahead");
		return Integer.parseInt(String.valueOf(rule.weather().opens().get(0).bound()).replace("F", ""));
	}

	@Test
	void seedlingsGoOutInTheDaysOfTheTable() {
		assertThat(crops()).hasSize(54).filteredOn((crop) -> !crop[SET_OUT_FROM].isEmpty()).allSatisfy((crop) -> {
			Rule rule = rule("crops", "set-out-", species(crop));
			assertThat(days(rule, Span::from, species(crop))).isEqualTo(Integer.parseInt(crop[SET_OUT_FROM]));
			assertThat(days(rule, Span::to, species(crop))).isEqualTo(Integer.parseInt(crop[SET_OUT_TO]));
		});
	}

	@Test
	void seedIsSownIndoorsAsManyWeeksBeforeAsTheTableSays() {
		assertThat(crops()).filteredOn((crop) -> !crop[WEEKS_MOST].isEmpty()).hasSize(44).allSatisfy((crop) -> {
			Rule rule = rule("crops", "sow-indoors", species(crop));
			assertThat(days(rule, Span::from, species(crop))).isEqualTo(-7 * Integer.parseInt(crop[WEEKS_MOST]));
			assertThat(days(rule, Span::to, species(crop))).isEqualTo(-7 * Integer.parseInt(crop[WEEKS_FEWEST]));
		});
	}

	@Test
	void seedIsSownOutdoorsFromTheDayOfTheTableForFourWeeks() {
		assertThat(crops()).filteredOn((crop) -> !crop[SOW_FROM].isEmpty()).isNotEmpty().allSatisfy((crop) -> {
			Rule rule = rule("direct-sowing", "sow-", species(crop));
			int from = Integer.parseInt(crop[SOW_FROM]);
			assertThat(days(rule, Span::from, species(crop))).isEqualTo(from);
			assertThat(days(rule, Span::to, species(crop))).isEqualTo(from + 28);
		});
	}

	/** Kinds that take no frost wait for the soil in which the table has them sprout. */
	@Test
	void tenderSeedWaitsForTheSoilOfTheTable() {
		assertThat(crops()).filteredOn((crop) -> !crop[SOW_FROM].isEmpty() && crop[CLASS].endsWith("tender"))
			.isNotEmpty()
			.allSatisfy((crop) -> {
				MarkerAnchor from = (MarkerAnchor) ((Span) rule("direct-sowing", "sow-", species(crop)).timing())
					.from();
				assertThat(from.floor()).isNotNull()
					.satisfies((soil) -> assertThat(soil.eventFor(species(crop).id()))
						.startsWith("the soil warming to %s °F ".formatted(crop[SPROUTS])));
			});
	}

	/**
	 * Seedlings wait for the table's nights and soil, but for no more than 55 and 65 °F,
	 * which is our choice.
	 */
	@Test
	void tenderSeedlingsWaitForTheNightsAndTheSoilOfTheTable() {
		assertThat(crops()).filteredOn((crop) -> !crop[SET_OUT_FROM].isEmpty() && crop[CLASS].endsWith("tender"))
			.isNotEmpty()
			.allSatisfy((crop) -> {
				MarkerAnchor from = (MarkerAnchor) ((Span) rule("crops", "set-out-", species(crop)).timing()).from();
				MarkerAnchor nights = Objects.requireNonNull(from.floor());
				MarkerAnchor soil = Objects.requireNonNull(nights.floor());
				assertThat(nights.eventFor(species(crop).id()))
					.startsWith("nights warming to %d °F ".formatted(Math.min(55, Integer.parseInt(crop[NIGHT]))));
				assertThat(soil.eventFor(species(crop).id()))
					.startsWith("the soil warming to %d °F ".formatted(Math.min(65, Integer.parseInt(crop[SOIL]))));
			});
	}

	@Test
	void seedlingsComeInOnNightsBelowTheirLimit() {
		assertThat(crops()).filteredOn((crop) -> !crop[NIGHT].isEmpty()).isNotEmpty().allSatisfy((crop) -> {
			int limit = Integer.parseInt(crop[NIGHT]);
			assertThat(opens(rule("hardening", "nights-below-", species(crop)))).as(crop[0])
				.isBetween(limit - 1, limit + 1);
		});
	}

	/** Basil is covered sooner: the table has it hurt at 38 °F, above its limit. */
	@Test
	void everyCropIsCoveredAtItsLimitOrALittleAbove() {
		assertThat(crops()).allSatisfy((crop) -> {
			int limit = Integer.parseInt(crop[COVER]);
			assertThat(opens(rule("frost-nights", "cover-", species(crop)))).as(crop[0])
				.isBetween(limit, crop[0].equals("Basil") ? limit + 4 : limit + 1);
		});
	}

}
