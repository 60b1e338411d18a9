package org.leafward.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

/** Names of pictures and their text: WCAG 2.2, 1.1.1; lines where the figures are. */
class WeatherPicturesTests {

	@Test
	void picturesAreNamedAndDescribed() {
		for (String picture : List.of(Samples.degreeDays("h").svg(), Samples.water("w").svg(),
				Samples.temperatures("t").svg(), Samples.light("l").svg())) {
			Element svg = parse(picture);
			assertThat(svg.attr("role")).isEqualTo("img");
			assertThat(svg.attr("aria-labelledby").split(" ")).containsExactly(svg.selectFirst("svg > title").id(),
					svg.selectFirst("svg > desc").id());
			assertThat(svg.selectFirst("svg > desc").text()).contains("The table below has");
			assertThat(svg.select("[style], script")).isEmpty();
		}
	}

	@Test
	void degreeDaysRiseAndAreLabelledOnTheCurve() {
		Element svg = parse(Samples.degreeDays("h").svg());
		List<Double> heights = heights(svg, "polyline.observed-line");
		assertThat(heights).hasSize(80).isSortedAccordingTo((a, b) -> Double.compare(b, a));
		assertThat(svg.select("polyline.projected-line, polyline.normal-line, polygon.normal-band")).hasSize(3);
		assertThat(svg.select("g.latest text").text()).isEqualTo("320 by 19 May");
		assertThat(svg.select("g.goal text").eachText()).contains("200 on 19 Apr", "500 on 19 Jun");
		assertThat(svg.selectFirst("desc").text()).contains("320 degree-days have come by 19 May",
				"half of past years had 240");
		assertThat(svg.select(".today-label").text()).isEqualTo("Today 20 May");
	}

	@Test
	void degreeDaysHaveATable() {
		List<DegreeDayCurve.TableRow> rows = Samples.degreeDays("h").rows();
		assertThat(rows).extracting(DegreeDayCurve.TableRow::day)
			.startsWith(LocalDate.of(2026, 3, 31), LocalDate.of(2026, 4, 30), LocalDate.of(2026, 5, 19),
					LocalDate.of(2026, 5, 31));
		assertThat(rows.get(2).observed()).isEqualTo(320);
		assertThat(rows.get(3).observed()).isNull();
		assertThat(rows.get(3).projected()).isCloseTo(320 + 12 * 4, within(1e-9));
	}

	@Test
	void pastYearsAloneAreDrawnAndNothingIsNot() {
		DegreeDayCurve full = Samples.degreeDays("h");
		Element svg = parse(
				new DegreeDayCurve("p", "50 °F", full.today(), List.of(), full.normal(), List.of(), List.of()).svg());
		assertThat(svg.select("polyline.observed-line, g.latest")).isEmpty();
		assertThat(svg.selectFirst("desc").text()).contains("No day of this season has been observed yet.");
		DegreeDayCurve none = new DegreeDayCurve("n", "50 °F", full.today(), List.of(), List.of(), List.of(),
				List.of());
		assertThat(none.drawable()).isFalse();
		assertThatIllegalStateException().isThrownBy(none::svg);
	}

	@Test
	void lightGrowsByDayBetweenTheLinesAndHeldDaysAreHatched() {
		LightRampPicture ramp = Samples.light("l");
		Element svg = parse(ramp.svg());
		assertThat(svg.select("path.ramp-light").attr("fill")).isEqualTo("url(#l-ramp)");
		// One bar for each day, each begun by a move.
		assertThat(svg.select("path.ramp-light").attr("d").chars().filter((sign) -> sign == 'M').count()).isEqualTo(15);
		Element held = svg.selectFirst("rect.mark-hold-off");
		assertThat(svg.select("rect.mark-hold-off")).hasSize(1);
		assertThat(held.attr("x")).isEqualTo("20%");
		assertThat(held.attr("fill")).isEqualTo("url(#l-hold-off)");
		assertThat(heights(svg, "polyline.light-site")).allMatch((y) -> y < 30);
		double now = Double.parseDouble(svg.selectFirst("line.light-now").attr("y1"));
		// 9 of 45 on a scale of 45 x 1.08 over 190 px, from the top at 44.
		assertThat(now).isCloseTo(44 + 190 * (1 - 9 / 48.6), within(0.01));
		assertThat(svg.text()).contains("now: 9", "its place: 45", "5 May", "19 May");
		assertThat(svg.selectFirst("desc").text()).contains("1 day is held");
		assertThat(ramp.rows()).hasSize(15);
		assertThat(new LightRampPicture("l", 9, ramp.days().subList(0, 1)).drawable()).isFalse();
	}

	@Test
	void waterFallsBelowTheDashesInDrought() {
		Element svg = parse(Samples.water("w").svg());
		assertThat(svg.select("polyline.water-line, polyline.stress-line, polygon.water-left")).hasSize(3);
		List<Double> water = heights(svg, "polyline.water-line");
		List<Double> stress = heights(svg, "polyline.stress-line");
		assertThat(water.get(0)).isLessThan(stress.get(0));
		assertThat(water.get(38)).isGreaterThan(stress.get(38));
		// One bar for each wet day, one for the watering.
		assertThat(svg.selectFirst("path.rain-bar").attr("d").split("M")).hasSize(1 + 1);
		assertThat(svg.select("rect.watering-bar")).hasSize(1);
		assertThat(svg.select("path.due-point")).hasSize(1);
		assertThat(svg.text()).contains("watered 30 mm on 10 Jul", "due 21 Jun", "plants feel drought", "full: 70 mm");
		assertThat(Samples.water("w").rows()).hasSize(6).first().satisfies((week) -> {
			assertThat(week.rain()).isEqualTo(12);
			assertThat(week.stressedDays()).isZero();
			assertThat(week.due()).isEmpty();
		});
	}

	@Test
	void temperaturesStandOverTheUsualRange() {
		Element svg = parse(Samples.temperatures("t").svg());
		assertThat(svg.select("polygon.normal-band")).hasSize(1);
		assertThat(svg.select("polyline.usual-edge")).hasSize(2);
		// A day without a temperature leaves a hole.
		assertThat(svg.selectFirst("path.observed-range").attr("d").split("M")).hasSize(1 + 98);
		assertThat(svg.select(".freeze-label").text()).isEqualTo("freezing, 0 °C (32 °F)");
		assertThat(svg.select("line.freeze-line")).hasSize(1);
		assertThat(svg.selectFirst("desc").text()).contains("The coldest day so far was 10 Jan with −21 °C (−6 °F).");
		assertThat(Samples.temperatures("t").rows()).hasSize(12).satisfies((rows) -> {
			assertThat(rows.get(0).lowest()).isEqualTo(-21);
			assertThat(rows.get(11).low()).isNull();
			assertThat(rows.get(11).usualLow()).isNotNull();
		});
	}

	private static List<Double> heights(Element svg, String selector) {
		List<Double> heights = new ArrayList<>();
		for (String point : svg.selectFirst(selector).attr("points").split(" ")) {
			heights.add(Double.parseDouble(point.split(",")[1]));
		}
		return heights;
	}

	private static Element parse(String svg) {
		return Jsoup.parse(svg, "", Parser.xmlParser()).selectFirst("svg");
	}

}
