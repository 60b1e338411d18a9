package org.leafward.lookalikes.draw;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.lookalikes.core.Answer;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.core.Question;
import org.leafward.lookalikes.key.ConfiguredKey;

import static org.assertj.core.api.Assertions.assertThat;

/** The drawings beside the answers of the key. */
class DrawingsTests {

	/** Questions that somebody answers by looking at a pattern. */
	static Stream<String> drawn() {
		return Stream.of("where-in-leaf", "border", "where-in-crown", "which-leaves", "bark");
	}

	@ParameterizedTest
	@MethodSource("drawn")
	void everyPatternOfTheKeyIsDrawn(String id) {
		Question question = ConfiguredKey.get().question(id).orElseThrow();
		assertThat(question.answers()).allSatisfy((one) -> assertThat(Drawings.of(one.id())).as(one.id()).isPresent());
	}

	@Test
	void drawingsOfAPageShareNoNamesAndNoneLooksLikeAnother() {
		Key key = ConfiguredKey.get();
		Set<String> names = new HashSet<>();
		Set<String> looks = new HashSet<>();
		key.questions().stream().flatMap((one) -> one.answers().stream()).map(Answer::id).forEach((id) -> {
			String svg = Drawings.of(id).orElse(null);
			if (svg != null) {
				Document document = Jsoup.parse(svg, Parser.xmlParser());
				for (Element named : document.select("[id]")) {
					assertThat(names.add(named.attr("id"))).as(named.attr("id")).isTrue();
				}
				for (Element using : document.select("[clip-path], [fill^=url]")) {
					String used = (using.hasAttr("clip-path") ? using.attr("clip-path") : using.attr("fill"))
						.replaceAll("url\\(#|\\)", "");
					assertThat(document.select("[id=" + used + "]")).as(used).hasSize(1);
				}
				assertThat(looks.add(svg.replace(id, ""))).as(id).isTrue();
				assertThat(document.select("svg[aria-hidden=true]")).hasSize(1);
			}
		});
		assertThat(looks).hasSize(27);
	}

}
