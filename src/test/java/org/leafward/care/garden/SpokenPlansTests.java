package org.leafward.care.garden;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.pack.SpokenPacks;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.language.Units;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Whatever the golden gardens are told, and every text of every rule, can be said in
 * Spanish with the same figures, and with one kind of units in both languages.
 */
class SpokenPlansTests {

	private static final Phrasebook SPANISH = SpokenPacks.book(Language.SPANISH, GardenPlanner.PACKS);

	private static final SpokenGardens GARDENS = SpokenGardens.all();

	private static final Pattern FIGURES = Pattern.compile("\\d+(?:[.,]\\d+)*");

	/** Words that stand in almost every English text and in no Spanish one. */
	private static final Pattern ENGLISH = Pattern
		.compile("(?i)\\b(?:the|and|with|of|is|are|from|until|before|when|not)\\b");

	private static final Pattern METRIC_UNIT = Pattern.compile(
			"(?:\\d ?(?:°C|mm|cm|m|km|km/h|m²|m/s|kg|g|g/m²|ml|l|litres?|litros?)(?![\\p{L}\\d²/])|(?i:\\b(?:litre|litro|metre|metro|centimetre|centímetro|millimetre|milímetro|gram|gramo)s?\\b))");

	private static final Pattern US_UNIT = Pattern.compile(
			"(?:\\d ?(?:°F|in|pulg|ft|pies²?|sq ft|gal|lb|oz|fl oz|mph|miles|millas)(?! the )(?![\\p{L}\\d²])|(?i:\\b(?:inch|inches|foot|gallons?|pounds?|ounces?|quarts?|yards?|pulgadas?|galón|galones|libras?|onzas?|yardas?)\\b))");

	/** Named after a place by whoever runs the server, or by the fixture. */
	private static final Pattern OWN = Pattern.compile("the station(?=, )");

	/** Has no US unit yet, as a station's distance stands so everywhere. */
	private static final Pattern DISTANCE = Pattern.compile(", (?:a )?\\d+\\.\\d km(?: away)?, ");

	/** Of a water balance, which is reckoned in mm. */
	private static final Pattern BALANCE = Pattern.compile(
			"\\d+ mm are missing, plants feel it from \\d+ mm on|faltan \\d+ mm, las plantas lo sienten a partir de \\d+ mm");

	private static Set<String> ofRules() {
		Set<String> texts = new TreeSet<>();
		for (RulePack pack : GardenPlanner.PACKS.all()) {
			texts.add(pack.title());
			for (Rule rule : pack.rules()) {
				Stream
					.of(rule.text().title(), rule.text().what(), rule.text().amount(), rule.text().why(),
							rule.text().otherwise(), rule.text().caution())
					.filter((one) -> one != null)
					.forEach(texts::add);
				texts.addAll(rule.amounts().values());
				if (rule.timing() instanceof Ramp ramp) {
					ramp.steps().forEach((step) -> {
						texts.add(step.place());
						texts.add(step.text());
					});
				}
			}
		}
		return texts;
	}

	private static Set<String> all() {
		Set<String> all = new TreeSet<>(ofRules());
		all.addAll(GARDENS.texts());
		all.addAll(GARDENS.reasons());
		all.addAll(GARDENS.names());
		return all;
	}

	@Test
	void gardensMeetEnoughToBeATest() {
		assertThat(GARDENS.texts()).hasSizeGreaterThan(1_000)
			.anyMatch((text) -> text.contains("Merrow County"))
			.anyMatch((text) -> text.startsWith("Cover with"))
			.anyMatch((text) -> text.contains("of gypsum"))
			.anyMatch((text) -> text.startsWith("Shade cloth"))
			.anyMatch((text) -> text.contains("hours outside"))
			.anyMatch((text) -> text.contains(", kept in: "))
			.anyMatch((text) -> text.contains("minutes of the hose"));
		assertThat(GARDENS.reasons()).hasSizeGreaterThan(30)
			.anyMatch((text) -> text.contains("leaves no day"))
			.anyMatch((text) -> text.contains("needless"));
		assertThat(GARDENS.names()).hasSizeGreaterThan(50).contains("whole site");
	}

	@Test
	void everyTextOfEveryRuleIsKnownInSpanish() {
		assertThat(ofRules()).filteredOn((text) -> !SPANISH.knows(text)).isEmpty();
	}

	@Test
	void everythingThatGardensAreToldIsKnownInSpanish() {
		assertThat(all()).filteredOn((text) -> !SPANISH.knows(text)).isEmpty();
	}

	@Test
	void noEnglishIsLeft() {
		assertThat(all()).map((text) -> OWN.matcher(SPANISH.say(text)).replaceAll("x"))
			.filteredOn((text) -> ENGLISH.matcher(text).find())
			.isEmpty();
	}

	@Test
	void figuresStayTheSame() {
		Map<String, String> odd = new TreeMap<>();
		all().stream()
			.filter((text) -> !figures(text).equals(figures(SPANISH.say(text))))
			.forEach((text) -> odd.put(text, SPANISH.say(text)));
		assertThat(odd).isEmpty();
	}

	@Test
	void metricReadersMeetNoOtherUnit() {
		assertThat(spoken(Units.METRIC)).filteredOn((text) -> US_UNIT.matcher(text).find()).isEmpty();
	}

	@Test
	void readersOfUsUnitsMeetNoOther() {
		assertThat(spoken(Units.US))
			.map((text) -> BALANCE.matcher(DISTANCE.matcher(text).replaceAll(" ")).replaceAll(""))
			.filteredOn((text) -> METRIC_UNIT.matcher(text).find())
			.isEmpty();
	}

	private static List<String> spoken(Units units) {
		List<String> spoken = new ArrayList<>();
		for (String text : all()) {
			spoken.add(units.in(text));
			spoken.add(units.in(SPANISH.say(text)));
		}
		return spoken;
	}

	private static List<String> figures(String text) {
		return FIGURES.matcher(text).results().map(MatchResult::group).sorted().toList();
	}

}
