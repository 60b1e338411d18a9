package org.leafward.pages;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Contrast of the palette: relative luminance and contrast ratio as WCAG 2.2 defines
 * them; text 4.5 to 1 (1.4.3), shapes and edges 3 to 1 (1.4.11).
 */
class PaletteTests {

	private static final Map<String, Map<String, String>> PALETTES = new HashMap<>();

	@BeforeAll
	static void readStyleSheet() throws IOException {
		String css = Files.readString(Path.of("src/main/resources/static/css/leafward.css"), StandardCharsets.UTF_8);
		int dark = css.indexOf("@media (prefers-color-scheme: dark)");
		int print = css.indexOf("@media print");
		PALETTES.put("light", colours(css.substring(0, dark)));
		PALETTES.put("dark", colours(css.substring(dark, css.indexOf("/* Ground */"))));
		PALETTES.put("print", colours(css.substring(print)));
	}

	/** Known ratios: black on white is 21; #767676 on white is the familiar 4.54. */
	@Test
	void theFormulaIsTheStandards() {
		assertThat(contrast("#000000", "#ffffff")).isCloseTo(21, within(0.001));
		assertThat(contrast("#767676", "#ffffff")).isCloseTo(4.54, within(0.005));
	}

	@ParameterizedTest
	@CsvSource({ "ink, paper", "quiet, paper", "ink, sink", "quiet, sink", "weather, paper", "fault, paper",
			"paper, ink" })
	void textCanBeRead(String text, String ground) {
		PALETTES.forEach(
				(name, colours) -> assertThat(contrast(colours, text, ground)).as(name).isGreaterThanOrEqualTo(4.5));
	}

	@ParameterizedTest
	@CsvSource({ "do, paper", "hold, paper", "watch, paper", "dead, paper", "weather, paper", "edge, paper",
			"fault, paper" })
	void shapesAndEdgesCanBeSeen(String shape, String ground) {
		PALETTES.forEach(
				(name, colours) -> assertThat(contrast(colours, shape, ground)).as(name).isGreaterThanOrEqualTo(3));
	}

	@Test
	void aRampGoesFromDimToLitInGreyToo() {
		PALETTES.forEach((name, colours) -> {
			assertThat(luminance(colours.get("lit"))).as(name).isGreaterThan(luminance(colours.get("dim")));
			assertThat(contrast(colours, "dim", "lit")).as(name).isGreaterThanOrEqualTo(3);
		});
	}

	@Test
	void everyColourIsNamedInThePalette() throws IOException {
		String css = Files.readString(Path.of("src/main/resources/static/css/leafward.css"), StandardCharsets.UTF_8);
		Matcher stray = Pattern.compile("(?m)^(?!\\s*--).*#[0-9a-fA-F]{3,8}\\b").matcher(css);
		assertThat(stray.results().map((match) -> match.group())).isEmpty();
		Matcher used = Pattern.compile("var\\((--[a-z]+)\\)").matcher(css);
		assertThat(used.results().map((match) -> match.group(1)))
			.allSatisfy((name) -> assertThat(css).contains(name + ":"));
	}

	@Test
	void coloursAreKeptOutOfTheCode() throws IOException {
		try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/leafward/pages"))) {
			assertThat(files.filter(Files::isRegularFile)).allSatisfy(
					(file) -> assertThat(Files.readString(file)).doesNotContainPattern("\"#[0-9a-fA-F]{3,8}\""));
		}
	}

	private static double contrast(Map<String, String> colours, String one, String other) {
		return contrast(colours.get(one), colours.get(other));
	}

	private static double contrast(String one, String other) {
		double first = luminance(one);
		double second = luminance(other);
		return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
	}

	private static double luminance(String colour) {
		int rgb = Integer.parseInt(colour.substring(1), 16);
		return 0.2126 * channel(rgb >> 16) + 0.7152 * channel(rgb >> 8) + 0.0722 * channel(rgb);
	}

	private static double channel(int value) {
		double share = (value & 0xff) / 255.0;
		return (share <= 0.04045) ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
	}

	private static Map<String, String> colours(String css) {
		Map<String, String> colours = new HashMap<>();
		Matcher matcher = Pattern.compile("--([a-z]+):\\s*(#[0-9a-f]{6});").matcher(css);
		while (matcher.find()) {
			colours.put(matcher.group(1), matcher.group(2));
		}
		assertThat(colours).hasSize(14);
		return colours;
	}

}
