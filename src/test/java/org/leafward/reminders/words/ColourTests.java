package org.leafward.reminders.words;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.leafward.language.Speech;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Words stand out from what is behind them by 4.5 to 1 at least, by day and at night: Web
 * Content Accessibility Guidelines 2.2, success criterion 1.4.3, with its definition of
 * contrast ratio and relative luminance.
 */
class ColourTests {

	private static final Pattern RULE = Pattern.compile("\\.([a-z]+) \\{([^}]*)\\}");

	private static final Pattern COLOUR = Pattern.compile("(?<![a-z-])(color|background-color):\\s*(#[0-9a-f]{6})");

	@Test
	void standOutByDayAndAtNight() {
		SampleMessages.all().forEach((name, content) -> {
			Document html = Jsoup.parse(SampleMessages.WORDS.write(content, Speech.USUAL, new FakeLinks()).html());
			Map<String, Map<String, String>> night = night(html);
			assertThat(night).as(name).containsOnlyKeys("paper", "link", "care", "quiet");
			int looked = 0;
			for (Element element : html.body().select("*")) {
				if (!element.ownText().isBlank()) {
					looked++;
					assertThat(contrast(day(element, "color"), day(element, "background-color")))
						.as("%s by day: %s", name, element)
						.isGreaterThanOrEqualTo(4.5);
					assertThat(contrast(at(element, "color", night), at(element, "background-color", night)))
						.as("%s at night: %s", name, element)
						.isGreaterThanOrEqualTo(4.5);
				}
			}
			assertThat(looked).as(name).isGreaterThan(4);
		});
	}

	/** What has a colour of its own by day must have one at night, too. */
	private static String at(Element element, String what, Map<String, Map<String, String>> night) {
		for (Element one = element; one != null; one = one.parent()) {
			if (colours(one.attr("style")).containsKey(what)) {
				return night.get(one.className()).get(what);
			}
		}
		throw new AssertionError("no " + what);
	}

	private static String day(Element element, String what) {
		for (Element one = element; one != null; one = one.parent()) {
			String colour = colours(one.attr("style")).get(what);
			if (colour != null) {
				return colour;
			}
		}
		throw new AssertionError("no " + what);
	}

	private static Map<String, Map<String, String>> night(Document html) {
		String style = html.select("style").html();
		assertThat(style).contains("@media (prefers-color-scheme: dark)");
		Map<String, Map<String, String>> night = new TreeMap<>();
		Matcher rules = RULE.matcher(style);
		while (rules.find()) {
			night.put(rules.group(1), colours(rules.group(2)));
		}
		return night;
	}

	private static Map<String, String> colours(String style) {
		Map<String, String> colours = new HashMap<>();
		COLOUR.matcher(style).results().forEach((MatchResult found) -> colours.put(found.group(1), found.group(2)));
		return colours;
	}

	private static double contrast(String one, String other) {
		double first = luminance(one);
		double second = luminance(other);
		return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
	}

	private static double luminance(String colour) {
		double[] parts = new double[3];
		for (int part = 0; part < 3; part++) {
			double share = Integer.parseInt(colour.substring(1 + 2 * part, 3 + 2 * part), 16) / 255.0;
			parts[part] = (share <= 0.04045) ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
		}
		return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
	}

	/**
	 * 21 to 1 is the most there is, says the definition; grey on white is 4.54 in G18.
	 */
	@Test
	void areReckonedAsDefined() {
		assertThat(contrast("#000000", "#ffffff")).isCloseTo(21, within(0.001));
		assertThat(contrast("#767676", "#ffffff")).isCloseTo(4.54, within(0.005));
	}

}
