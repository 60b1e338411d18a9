package org.leafward.pages;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.leafward.pages.YearStrip.Row;
import org.leafward.pages.YearStrip.Span;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

/**
 * Names of pictures: WCAG 2.2, 1.1.1. Bars are thinner than the 24 px of WCAG 2.2, 2.5.8,
 * which allows that where the same page has another way there: {@link YearStrip#lines()}.
 */
class YearStripTests {

	private static final LocalDate FROM = LocalDate.of(2026, 1, 1);

	private static final LocalDate TO = LocalDate.of(2026, 12, 31);

	@Test
	void hasATitleADescriptionAndAllItsSpans() {
		YearStrip strip = Samples.strip("year");
		Element svg = parse(strip);
		assertThat(svg.selectFirst("svg > title").text()).isEqualTo("The year at Alder Street schoolyard");
		assertThat(svg.selectFirst("svg > desc").text()).contains("hatched", "Thu 1 Jan 2026");
		assertThat(svg.attr("aria-labelledby")).isEqualTo(svg.selectFirst("svg > title").id());
		assertThat(svg.select("g.row")).hasSize(8);
		assertThat(svg.select("a.span")).hasSameSizeAs(strip.lines());
		int spans = strip.rows().stream().mapToInt((row) -> row.spans().size()).sum();
		assertThat(svg.select("a.span rect[class^=mark-]")).hasSize(spans);
		assertThat(svg.select(".date-line text").eachText()).containsExactly("Today 12 Nov", "Ground thaws 28 Mar",
				"Last freeze 14 May", "First freeze 30 Sep", "Ground freezes 24 Nov");
		assertThat(svg.select("text.month").eachText()).hasSize(24).startsWith("Jan", "Feb", "Mar");
	}

	@ParameterizedTest
	@CsvSource(nullValues = "none", value = { "DO, mark-do, none", "HOLD_OFF, mark-hold-off, url(#s-hold-off)",
			"RAMP, mark-ramp, url(#s-ramp)", "WATCH, mark-watch, url(#s-watch)", "WEATHER, mark-weather, none" })
	void eachKindHasItsOwnShape(Mark mark, String css, String fill) {
		Element svg = parse(strip(new Span(mark, FROM.plusDays(30), FROM.plusDays(60), "it", null)));
		Element bar = svg.selectFirst("g.span rect." + css);
		assertThat(bar.attr("fill")).isEqualTo((fill != null) ? fill : "");
		if (fill != null) {
			assertThat(svg.select("defs > [id=" + fill.substring(5, fill.length() - 1) + "]")).hasSize(1);
		}
		assertThat(svg.selectFirst("g.span").attr("aria-label")).startsWith(mark.word() + ": it, hedge, 31 Jan");
	}

	@Test
	void barsLieWhereTheirDaysLie() {
		Element bar = bar(new Span(Mark.DO, LocalDate.of(2026, 7, 2), LocalDate.of(2026, 12, 31), "it", "/t"));
		// 2 July is day 183 of 365 (printed day-of-year table): 182 days lie before it.
		assertThat(percent(bar, "x")).isCloseTo(100.0 * 182 / 365, within(0.01));
		assertThat(percent(bar, "x") + percent(bar, "width")).isCloseTo(100, within(0.02));
	}

	@Test
	void spansAreCutAtTheEdgesAndLeftOutBeyondThem() {
		Element bar = bar(new Span(Mark.DO, LocalDate.of(2025, 11, 1), LocalDate.of(2026, 1, 31), "it", "/t"));
		assertThat(percent(bar, "x")).isZero();
		assertThat(percent(bar, "width")).isCloseTo(100.0 * 31 / 365, within(0.01));
		Element outside = parse(strip(new Span(Mark.DO, TO.plusDays(1), TO.plusDays(9), "it", "/t")));
		assertThat(outside.select(".span")).isEmpty();
	}

	@Test
	void aSingleLastDayIsStillWithinThePicture() {
		Element bar = bar(new Span(Mark.WATCH, TO, TO, "look", "/t"));
		assertThat(percent(bar, "x") + percent(bar, "width")).isLessThanOrEqualTo(100.01);
		assertThat(percent(bar, "width")).isGreaterThan(1);
	}

	@Test
	void spansThatOverlapLieInDifferentLanesAndOthersShareOne() {
		Element svg = parse(strip(new Span(Mark.DO, FROM.plusDays(10), FROM.plusDays(90), "one", "/1"),
				new Span(Mark.HOLD_OFF, FROM.plusDays(50), FROM.plusDays(120), "two", "/2"),
				new Span(Mark.WATCH, FROM.plusDays(200), FROM.plusDays(220), "three", "/3")));
		assertThat(svg.select("rect.hit").eachAttr("y").stream().distinct()).hasSize(2);
		for (Element one : svg.select("rect.hit")) {
			for (Element other : svg.select("rect.hit")) {
				boolean apart = percent(one, "x") >= percent(other, "x") + percent(other, "width")
						|| percent(other, "x") >= percent(one, "x") + percent(one, "width");
				assertThat(one == other || apart || !one.attr("y").equals(other.attr("y"))).isTrue();
			}
		}
	}

	@Test
	void aGardenOfTenPlantingsFitsAPrintedPage() {
		// An A4 page at 96 px per inch is 1123 px tall (ISO 216: 297 mm).
		List<Span> busy = List.of(new Span(Mark.DO, FROM.plusDays(70), FROM.plusDays(100), "feed", "/1"),
				new Span(Mark.DO, FROM.plusDays(110), FROM.plusDays(120), "prune after bloom", "/2"),
				new Span(Mark.HOLD_OFF, FROM.plusDays(200), FROM.plusDays(300), "leave unpruned", "/3"),
				new Span(Mark.DO, FROM.plusDays(250), FROM.plusDays(330), "water deeply", "/4"),
				new Span(Mark.DO, FROM.plusDays(300), FROM.plusDays(335), "hang burlap", "/5"),
				new Span(Mark.WATCH, FROM.plusDays(60), FROM.plusDays(140), "look for winter burn", "/6"));
		List<Row> rows = IntStream.range(0, 10).mapToObj((i) -> new Row("bed " + i, busy)).toList();
		Element svg = parse(new YearStrip("s", "A year", FROM, TO, null, rows, List.of()));
		assertThat(Double.parseDouble(svg.attr("height"))).isLessThan(1123);
	}

	@Test
	void repeatsAreOneEntryWhenNear() {
		YearStrip strip = new YearStrip("s", "A year", FROM, TO, FROM.plusDays(155),
				List.of(new Row("hedge",
						List.of(new Span(Mark.DO, FROM.plusDays(150), FROM.plusDays(151), "water", "/1"),
								new Span(Mark.DO, FROM.plusDays(157), FROM.plusDays(158), "water", "/2"),
								new Span(Mark.DO, FROM.plusDays(300), FROM.plusDays(301), "water", "/3")))),
				List.of());
		Element svg = parse(strip);
		assertThat(svg.select("a.span").eachAttr("href")).as("the next of each").containsExactly("/2", "/3");
		assertThat(svg.select("text.span-label").eachText()).containsExactly("water", "water");
		assertThat(strip.lines()).containsExactly(
				new YearStrip.Line("hedge", Mark.DO, "water", "31 May – 8 Jun, 2 times", "/2"),
				new YearStrip.Line("hedge", Mark.DO, "water", "28 Oct – 29 Oct", "/3"));
	}

	@Test
	void noLabelsTouchOnAPhone() {
		Element svg = parse(Samples.strip("year"));
		for (Element row : svg.select("g.row")) {
			List<Element> labels = row.select("text.span-label:not(.wide-only)");
			for (Element one : labels) {
				assertThat(left(one)).isGreaterThanOrEqualTo(0);
				assertThat(right(one)).isLessThanOrEqualTo(102);
				for (Element other : labels) {
					if (one != other && one.attr("y").equals(other.attr("y"))) {
						assertThat(left(one) >= right(other) || left(other) >= right(one)).isTrue();
					}
				}
			}
		}
	}

	@Test
	void aLongHatchedBarCarriesItsWordsItself() {
		Element svg = parse(strip(new Span(Mark.HOLD_OFF, FROM, TO, "leave it unpruned", "/t")));
		Element label = svg.selectFirst("text.span-label:not(.wide-only)");
		assertThat(left(label)).isZero();
		assertThat(parse(strip(new Span(Mark.DO, FROM, TO, "leave it unpruned", "/t"))).select("text.span-label"))
			.as("not a solid one")
			.isEmpty();
	}

	@Test
	void noWordsRunIntoAnotherBar() {
		for (Element row : parse(Samples.strip("year")).select("g.row")) {
			for (Element label : row.select("text.span-label:not(.wide-only)")) {
				double y = Double.parseDouble(label.attr("y"));
				for (Element bar : row.select("rect[class^=mark-]")) {
					if (bar.parent() == label.previousElementSibling()) {
						continue;
					}
					double above = y - Double.parseDouble(bar.attr("y"));
					boolean apart = left(label) >= percent(bar, "x") + percent(bar, "width") - 0.01
							|| right(label) <= percent(bar, "x") + 0.01;
					assertThat(above < 0 || above > 14 || apart).as(label.text()).isTrue();
				}
			}
		}
	}

	@Test
	void wordsAreEscapedAndThoseWithoutRoomLeftToTheTable() {
		String words = "<script>alert('one')</script> and much more to read, more than any phone is wide";
		YearStrip strip = strip(new Span(Mark.DO, FROM.plusDays(180), FROM.plusDays(190), words, "/t"));
		Element svg = parse(strip);
		assertThat(svg.select("script")).isEmpty();
		assertThat(svg.select("text.span-label:not(.wide-only)")).isEmpty();
		assertThat(svg.selectFirst("a.span title").text()).contains(words);
		assertThat(strip.lines()).singleElement().extracting(YearStrip.Line::label).isEqualTo(words);
	}

	@Test
	void coloursStayInTheStyleSheet() {
		assertThat(Samples.strip("year").svg()).doesNotContainPattern("#[0-9a-fA-F]{3,6}\\b|rgb\\(|style=");
	}

	@Test
	void twoStripsOnAPageShareNoId() {
		List<String> one = parse(Samples.strip("one")).select("[id]").eachAttr("id");
		List<String> two = parse(Samples.strip("two")).select("[id]").eachAttr("id");
		assertThat(one).isNotEmpty().doesNotHaveDuplicates().doesNotContainAnyElementsOf(two);
	}

	@Test
	void refusesWhatCannotBeDrawn() {
		assertThatIllegalArgumentException()
			.isThrownBy(() -> new YearStrip("a b", "t", FROM, TO, null, List.of(), List.of()));
		assertThatIllegalArgumentException()
			.isThrownBy(() -> new YearStrip("a", "t", TO, FROM, null, List.of(), List.of()));
		assertThatIllegalArgumentException().isThrownBy(() -> new Span(Mark.DO, TO, FROM, "it", null));
		assertThat(parse(new YearStrip("a", "t", FROM, TO, null, List.of(), List.of())).select("g.row")).isEmpty();
	}

	private static double left(Element label) {
		double at = percent(label, "x");
		return "end".equals(label.attr("text-anchor")) ? at - Lanes.width(label.text()) : at;
	}

	private static double right(Element label) {
		return left(label) + Lanes.width(label.text());
	}

	private static Element bar(Span span) {
		return parse(strip(span)).selectFirst("rect." + span.mark().css());
	}

	private static double percent(Element element, String attribute) {
		assertThat(element.attr(attribute)).endsWith("%");
		return Double.parseDouble(element.attr(attribute).replace("%", ""));
	}

	private static YearStrip strip(Span... spans) {
		return new YearStrip("s", "A year", FROM, TO, null, List.of(new Row("hedge", List.of(spans))), List.of());
	}

	private static Element parse(YearStrip strip) {
		return Jsoup.parse(strip.svg(), "", Parser.xmlParser()).selectFirst("svg");
	}

}
