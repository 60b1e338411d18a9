package org.leafward.pages;

import java.time.LocalDate;
import java.util.List;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

import org.leafward.pages.FreezeCurve.Chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

/** Names of pictures and their text: WCAG 2.2, 1.1.1 and its technique G92. */
class FreezeCurveTests {

	@Test
	void isNamedAndDescribedInWords() {
		Element svg = parse(Samples.curve("c"));
		assertThat(svg.attr("role")).isEqualTo("img");
		assertThat(svg.selectFirst("svg > title").text()).isEqualTo("Chance of a minimum at or below 32 °F (0.0 °C)");
		assertThat(svg.selectFirst("svg > desc").text()).contains("1 May", "16 May", "4 Oct", "19 Sep");
		assertThat(svg.attr("aria-labelledby").split(" ")).containsExactly(svg.selectFirst("svg > title").id(),
				svg.selectFirst("svg > desc").id());
	}

	@Test
	void springFallsAndFallRises() {
		Element svg = parse(Samples.curve("c"));
		assertThat(heights(svg, "polyline.spring")).hasSize(9).isSorted();
		assertThat(heights(svg, "polyline.fall")).hasSize(9).isSortedAccordingTo((a, b) -> Double.compare(b, a));
	}

	@Test
	void medianAndTenPercentAreLabelledOnThePoint() {
		Element svg = parse(Samples.curve("c"));
		assertThat(svg.select("g.point.spring .point-date").eachText()).containsExactly("1 May", "16 May");
		assertThat(svg.select("g.point.fall .point-date").eachText()).containsExactly("4 Oct", "19 Sep");
		assertThat(svg.select(".site-label").eachText()).containsExactly("Alder Street: last 5 May", "first 28 Sep");
	}

	@Test
	void aLongSeasonHasItsLabelsInsideAShortOneOutside() {
		assertThat(parse(Samples.curve("c")).select("g.point.fall text[text-anchor=end]")).isEmpty();
		FreezeCurve mild = new FreezeCurve("m", "32 °F",
				Samples.curve("c")
					.spring()
					.stream()
					.map((chance) -> new Chance(chance.percent(), chance.date().minusDays(70)))
					.toList(),
				Samples.curve("c")
					.fall()
					.stream()
					.map((chance) -> new Chance(chance.percent(), chance.date().plusDays(50)))
					.toList(),
				List.of());
		assertThat(parse(mild).select("g.point.fall text[text-anchor=end]")).hasSize(4);
	}

	@Test
	void oneSideAloneIsDrawn() {
		FreezeCurve spring = new FreezeCurve("s", "24 °F", Samples.curve("c").spring(), List.of(), List.of());
		Element svg = parse(spring);
		assertThat(svg.select("polyline")).hasSize(1);
		assertThat(svg.selectFirst("desc").text()).contains("In spring").doesNotContain("In fall");
		assertThat(svg.text()).doesNotContain("Fall:");
	}

	@Test
	void tableHasEveryChanceOfEitherSide() {
		FreezeCurve curve = new FreezeCurve("t", "32 °F",
				List.of(new Chance(50, LocalDate.of(2026, 5, 1)), new Chance(10, LocalDate.of(2026, 5, 16))),
				List.of(new Chance(50, LocalDate.of(2026, 10, 4))), List.of());
		assertThat(curve.rows()).containsExactly(new FreezeCurve.TableRow(10, LocalDate.of(2026, 5, 16), null),
				new FreezeCurve.TableRow(50, LocalDate.of(2026, 5, 1), LocalDate.of(2026, 10, 4)));
	}

	@Test
	void withoutChancesThereIsNoPicture() {
		FreezeCurve none = new FreezeCurve("n", "32 °F", List.of(), List.of(), List.of());
		assertThat(none.drawable()).isFalse();
		assertThatIllegalStateException().isThrownBy(none::svg);
		assertThatIllegalArgumentException().isThrownBy(() -> new Chance(0, Samples.TODAY));
	}

	private static List<Double> heights(Element svg, String selector) {
		return List.of(svg.selectFirst(selector).attr("points").split(" "))
			.stream()
			.map((point) -> Double.parseDouble(point.split(",")[1]))
			.toList();
	}

	private static Element parse(FreezeCurve curve) {
		return Jsoup.parse(curve.svg(), "", Parser.xmlParser()).selectFirst("svg");
	}

}
