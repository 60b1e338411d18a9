package org.leafward.pages;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

/** What must be escaped: XML 1.0, 2.4 and 2.2. The reader is jsoup's. */
class SvgTests {

	private static final String NASTY = "</text><script>alert(\"1\")</script> & 'so' \u0000\u0008";

	@Test
	void textAndAttributesComeBackAsTheyWere() {
		String markup = new Svg().open("svg").element("text", NASTY, "aria-label", NASTY).close().toString();
		for (Parser parser : new Parser[] { Parser.htmlParser(), Parser.xmlParser() }) {
			Element root = Jsoup.parse(markup, "", parser);
			assertThat(root.select("script")).isEmpty();
			Element text = root.selectFirst("text");
			assertThat(text.wholeText()).isEqualTo("</text><script>alert(\"1\")</script> & 'so' ");
			assertThat(text.attr("aria-label")).isEqualTo(text.wholeText());
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "style", "STYLE", "onclick", "onLoad", "a b", "x=\"\"", "" })
	void attributesThatCarryScriptOrStyleAreRefused(String name) {
		assertThatIllegalArgumentException().isThrownBy(() -> new Svg().empty("rect", name, "x"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "javascript:alert(1)", "//elsewhere.example", "https://elsewhere.example", "/\\elsewhere",
			"tasks/1" })
	void linksLeadNowhereElse(String href) {
		assertThatIllegalArgumentException().isThrownBy(() -> new Svg().open("a", "href", href));
	}

	@ParameterizedTest
	@CsvSource({ "1, 1", "0.005, 0.01", "-0.001, 0", "33.333333, 33.33", "1e7, 10000000", "100, 100" })
	void numbersAreShortAndPlain(double value, String text) {
		assertThat(Svg.number(value)).isEqualTo(text);
	}

	@Test
	void elementsMustBeClosed() {
		assertThatIllegalStateException().isThrownBy(() -> new Svg().open("svg").toString());
		assertThatIllegalStateException().isThrownBy(() -> new Svg().close());
		assertThatIllegalArgumentException().isThrownBy(() -> new Svg().empty("rect", "x"));
	}

	@Test
	void nullLeavesTheAttributeOut() {
		assertThat(new Svg().empty("rect", "x", null, "y", 2).toString()).isEqualTo("<rect y=\"2\"/>");
	}

}
