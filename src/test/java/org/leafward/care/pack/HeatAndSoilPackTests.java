package org.leafward.care.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.SoilTestAnchor;
import org.leafward.care.core.rule.SoilFinding;
import org.leafward.care.core.rule.Days;
import org.leafward.care.core.rule.Computes;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Span;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;

import static org.assertj.core.api.Assertions.assertThat;

/** A pack that hangs on sums of heat, the soil and cool days. */
class HeatAndSoilPackTests {

	private static List<Rule> rules() throws IOException {
		Path path = Path.of("src/test/resources/rulepacks/valid/heat-and-soil.yaml");
		KnownPlants known = KnownPlants.of(Set.of("boxwood"), List.of(), Set.of());
		return new RulePackReader(new KnowledgeReader(), known, Phenology.NONE)
			.read(List.of(new KnowledgeFile("rulepacks/heat-and-soil.yaml", Files.readAllBytes(path))))
			.packs()
			.get(0)
			.rules();
	}

	private static String code(Anchor anchor) {
		return ((MarkerAnchor) anchor).marker().code();
	}

	@Test
	void anchorsAreReadAsWritten() throws IOException {
		List<Span> spans = rules().stream().map((rule) -> (Span) rule.timing()).toList();
		assertThat(spans).hasSize(6);
		assertThat(code(spans.get(0).from())).isEqualTo("degree-days 50F 200 p50");
		assertThat(code(spans.get(0).to())).isEqualTo("degree-days 32F 900 from 02-15 p10");
		assertThat(code(spans.get(1).from())).isEqualTo("soil-warms-to 55F p50");
		assertThat(code(spans.get(1).to())).isEqualTo("soil-cools-to 10C p90");
		assertThat(code(spans.get(2).from())).isEqualTo("days-cool-to 70F p50");
		assertThat(code(spans.get(3).from())).isEqualTo("upper-soil-warms-to 50F p90");
		assertThat(code(spans.get(3).to())).isEqualTo("upper-soil-cools-to 55F p50");
		assertThat(code(spans.get(4).from())).isEqualTo("de-icing-end p50");
		assertThat(code(spans.get(4).to())).isEqualTo("daylight-lengthens-to 13h30m");
	}

	@Test
	void wordsNameTheSumAndItsStart() throws IOException {
		Span span = (Span) rules().get(0).timing();
		assertThat(span.from().words())
			.contains("degree-days above 50 °F (10 °C) reaching sum 200, counted from 1 March");
		assertThat(span.to().words()).contains("7 days after", "sum 900, counted from 15 February");
	}

	@Test
	void wordsNameTheLightAndTheSalt() throws IOException {
		Span span = (Span) rules().get(4).timing();
		assertThat(span.from().words()).isEqualTo("3 days after the middle date of the end of de-icing");
		assertThat(span.to().words()).isEqualTo("7 days before the day lengthening to 13 h 30 min");
	}

	@Test
	void aSoilTestChoosesTheBedsAndItsLastPartEndsTheTurns() throws IOException {
		Rule rule = rules().get(5);
		assertThat(rule.concern().groups()).isEmpty();
		assertThat(rule.computes()).isEqualTo(Computes.GYPSUM);
		Span span = (Span) rule.timing();
		assertThat(span.from()).isEqualTo(new SoilTestAnchor(SoilFinding.GYPSUM, false, Days.NONE));
		assertThat(span.to()).isEqualTo(new SoilTestAnchor(SoilFinding.GYPSUM, true, Days.of(181)));
		assertThat(span.from().words()).isEqualTo("on the day of a soil test that asks for gypsum");
		assertThat(span.to().words()).startsWith("181 days after the last part");
	}

}
