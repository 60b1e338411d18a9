package org.leafward.advisories.conditions;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.advisories.core.watch.WatchCondition;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Conditions as files: mistakes name file, line and what to write instead. */
class ConditionReaderTests {

	private static final String GOOD = """
			title: A test
			conditions:
			  - condition: heat
			    title: {en: Heat, es: Calor}
			    why: So that the reader has something to read.
			    alert: {category: Met, urgency: Expected, severity: Minor, certainty: Likely, response: [Prepare]}
			    concerns: {groups: [annual]}
			    thresholds:
			      high: {label: {en: High, es: Máxima}, value: 90, unit: F, lowest: 80, highest: 110, source: made up, regions: {US-MI: 88}}
			      cool-down: {label: {en: Not again for, es: No de nuevo durante}, value: 7, unit: days, lowest: 1, highest: 60, source: made up}
			    season: {from: {day-of-year: "05-01"}, to: {marker: first-fall-freeze, threshold: 32F}}
			    on-one-day:
			      from: 0
			      to: 2
			      all:
			        - {figure: high, at-least: high}
			    text:
			      en: {headline: 'Heat, {when}', what: 'Up to {high} in {where}.', impacts: Leaves burn., to-do: Water early.}
			      es: {headline: 'Calor, {when}', what: 'Hasta {high} en {where}.', impacts: Las hojas se queman., to-do: Riegue temprano.}
			    sources: [made up]
			""";

	private static List<WatchCondition> read(String text) {
		return new ConditionReader(new KnowledgeReader(), ConfiguredConditions.catalogue())
			.read(List.of(new KnowledgeFile("advisories/test.yaml", text.getBytes(StandardCharsets.UTF_8))));
	}

	@Test
	void whatIsWrittenIsRead() {
		WatchCondition condition = read(GOOD).get(0);
		assertThat(condition.threshold("high").value()).isEqualTo(90);
		assertThat(condition.moved()).containsExactly(new WatchCondition.Moved("high", "US-MI", 88));
		assertThat(condition.condition().alert().responses()).containsExactly("Prepare");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
			value: 90              | value: 120                | 9  | 120 is outside 80 to 110
			{US-MI: 88}            | {US-MI: 8}                | 9  | 8 °F is outside 80 to 110
			{figure: high, at-least| {figure: hig, at-least    | 16 | there is no figure 'hig'
			at-least: high         | at-least: hihg            | 16 | there is no threshold 'hihg'
			figure: high, at-least | figure: wind, at-least    | 16 | 'high' is no threshold for wind
			figure: high, at-least | figure: rain-past, days: 7, at-least | 16 | 'high' is no threshold for rain-past
			groups: [annual]       | groups: [anual]           | 7  | there is no plant group 'anual'
			Up to {high}           | Up to {low}               | 18 | there is no figure for the place {low}
			marker: first-fall-freeze | marker: first-fal-freeze | 11 | there is no marker 'first-fal-freeze'
			day-of-year: "05-01"   | day-of-year: "02-30"      | 11 | '02-30' is no day of the year
			category: Met          | category: Weather         | 6  | Weather
			cool-down: {label      | cooldown: {label          | 9  | there is no threshold 'cool-down'
			to: 2                  | to: -1                    | 14 | -1
			figure: high, at-least | figure: kill-margin, at-least | 16 | needs the stages of buds
			""")
	void mistakesAreNamedByLine(String good, String bad, int line, String what) {
		assertThat(GOOD).contains(good);
		assertThatExceptionOfType(BrokenKnowledge.class).isThrownBy(() -> read(GOOD.replace(good, bad)))
			.satisfies((broken) -> assertThat(broken.problems()).anySatisfy((problem) -> {
				assertThat(problem.file()).isEqualTo("advisories/test.yaml");
				assertThat(problem.line()).isEqualTo(line);
				assertThat(problem.what()).contains(what);
				assertThat(problem.mend()).isNotBlank();
			}));
	}

	@Test
	void aThresholdThatNothingAsksForIsAMistake() {
		assertThatExceptionOfType(BrokenKnowledge.class).isThrownBy(() -> read(GOOD.replace("      cool-down:",
				"      low: {label: {en: Low, es: Mínima}, value: 30, unit: F, lowest: 20, highest: 40, source: made up}\n      cool-down:")))
			.satisfies((broken) -> assertThat(broken.problems())
				.anyMatch((one) -> one.what().contains("nothing asks for the threshold 'low'")));
	}

	/** What the issue names. */
	@Test
	void theTenConditionsAreThere() {
		assertThat(ConfiguredConditions.all()).extracting(WatchCondition::code)
			.containsExactlyInAnyOrder("dry-before-freeze", "cold-dry-wind", "thaw-watering", "late-freeze",
					"first-fall-freeze", "hot-dry-wind", "sudden-sun", "weed-barrier", "leaf-scorch-scouting",
					"salt-leaching");
		assertThat(ConfiguredConditions.all())
			.allSatisfy((one) -> assertThat(one.condition().concerns().among(ConfiguredConditions.catalogue().all()))
				.as(one.code())
				.isNotEmpty());
	}

}
