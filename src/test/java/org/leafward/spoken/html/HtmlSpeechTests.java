package org.leafward.spoken.html;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.language.Phrasebooks;
import org.leafward.language.SpokenDatesFixture;
import org.leafward.language.Units;
import org.leafward.language.core.Phrases;
import org.leafward.language.core.Phrases.Pair;
import org.leafward.measure.DayWindow;

import static org.assertj.core.api.Assertions.assertThat;

class HtmlSpeechTests {

	private final List<String> unknown = new ArrayList<>();

	@Test
	void saysEachBlockByItself() {
		assertThat(say("<p>Done</p><ul><li>To do</li></ul>", "Done", "Hecho", "To do", "Por hacer"))
			.isEqualTo("<p>Hecho</p><ul><li>Por hacer</li></ul>");
		assertThat(this.unknown).isEmpty();
	}

	@Test
	void aLineWithALinkIsOneSentenceWhoseLinkMayMove() {
		assertThat(say("<p>Every date at <a href=\"/x\">Orchard Lane</a> hangs on this.</p>",
				"Every date at <1>{own}</1> hangs on this.", "De esto depende <1>{1}</1> entero."))
			.isEqualTo("<p>De esto depende <a href=\"/x\">Orchard Lane</a> entero.</p>");
	}

	@Test
	void withoutASentenceEachPartIsSaid() {
		assertThat(say("<p><a>Care log</a>: what was done. <a>Back</a></p>", "Care log", "Registro", "what was done",
				"lo hecho", "Back", "Volver"))
			.isEqualTo("<p><a>Registro</a>: lo hecho. <a>Volver</a></p>");
	}

	@Test
	void namesAreNeverSaid() {
		assertThat(say("<h1 translate=\"no\">Back</h1><p>See <b translate=\"no\">Back</b></p>", "Back", "Volver", "See",
				"Vea"))
			.isEqualTo("<h1 translate=\"no\">Back</h1><p>Vea <b translate=\"no\">Back</b></p>");
		assertThat(say("<p>See <b translate=\"no\">Back</b>.</p>", "See <1>{own}</1>.", "Vea <1>{1}</1>."))
			.isEqualTo("<p>Vea <b translate=\"no\">Back</b>.</p>");
		assertThat(this.unknown).isEmpty();
	}

	/** WCAG 2.2, success criterion 3.1.2. */
	@Test
	void whatIsNotKnownStaysAndIsMarkedAsEnglish() {
		assertThat(say("<p>Mulch</p><p>Done <b>yet</b></p>", "Done", "Hecho"))
			.isEqualTo("<p lang=\"en\">Mulch</p><p>Hecho <b lang=\"en\">yet</b></p>");
		assertThat(this.unknown).containsExactly("Mulch", "yet");
	}

	@Test
	void attributesThatAreReadOutAreSaid() {
		assertThat(
				say("<nav aria-label=\"Pages\"><img alt=\"Map\" src=\"a\"><input type=\"submit\" value=\"Done\"></nav>",
						"Pages", "Páginas", "Map", "Mapa", "Done", "Hecho"))
			.isEqualTo(
					"<nav aria-label=\"Páginas\"><img alt=\"Mapa\" src=\"a\"><input type=\"submit\" value=\"Hecho\"></nav>");
		assertThat(say("<b data-key=\"Done\" data-ready=\"Not yet\"></b>", "Done", "Hecho", "Not yet", "Aún no"))
			.isEqualTo("<b data-key=\"Done\" data-ready=\"Aún no\"></b>");
		assertThat(say("<input type=\"text\" value=\"Done\">", "Done", "Hecho")).contains("value=\"Done\"");
	}

	@Test
	void picturesKeepTheirShapeAndAreSaid() {
		assertThat(say("<p>Here <svg viewBox=\"0 0 1 1\"><title>Rain</title><text>Jan</text></svg> it is</p>",
				"Here <1/> it is", "Aquí <1/> está", "Rain", "Lluvia", "Jan", "ene"))
			.contains("<svg viewBox=\"0 0 1 1\"><title>Lluvia</title><text>ene</text></svg>")
			.startsWith("<p>Aquí ")
			.endsWith(" está</p>");
	}

	@Test
	void aWholePageTellsItsLanguage() {
		assertThat(say(
				"<!DOCTYPE html><html lang=\"en\"><head><title>Back – Leafward</title></head><body><p>1</p></body></html>",
				"Back", "Volver"))
			.contains("<html lang=\"es\">", "<title>Volver – Leafward</title>");
	}

	@Test
	void datesAndSpansAreSaid() {
		assertThat(say("<p>Thu 12 Nov</p><p>12 Nov – 3 Dec 2027</p><p>Fri 12 Nov 2026</p>", "{date}", "{1}"))
			.startsWith("<p>jue 12 nov</p><p>12 nov – 3 dic 2027</p>")
			.as("that day was a Thursday")
			.endsWith("<p lang=\"en\">Fri 12 Nov 2026</p>");
	}

	@Test
	void unitsAreChosenInEnglishToo() {
		assertThat(new HtmlSpeech(Phrasebooks.english(), Units.US, this.unknown::add)
			.say("<p>Water 25 mm (1 in) <b translate=\"no\">25 mm (1 in)</b></p>"))
			.isEqualTo("<p>Water 1 in <b translate=\"no\">25 mm (1 in)</b></p>");
	}

	@Test
	void whatIsEscapedStaysEscaped() {
		String html = "<p>See <b translate=\"no\">&lt;script&gt;alert(1)&lt;/script&gt; &amp; &lt;1&gt;</b> here</p>";
		assertThat(say(html, "See <1>{own}</1> here", "Aquí <1>{1}</1>"))
			.contains("<b translate=\"no\">&lt;script&gt;alert(1)&lt;/script&gt; &amp; &lt;1&gt;</b>")
			.doesNotContain("<script");
		assertThat(say("<p>Call &lt;2&gt; <b>them</b> now</p>", "Call {own} <1>them</1> now", "Ya {1} <1>x</1>"))
			.as("somebody's own marks are no elements")
			.contains("&lt;2&gt;", "<b ");
	}

	@Test
	void aTranslationThatLosesALinkIsNotUsed() {
		assertThat(say("<p>See <a href=\"/x\">it</a> now</p>", "See <1>it</1> now", "Vea ahora", "See", "Vea"))
			.contains("<a href=\"/x\" lang=\"en\">it</a>");
	}

	private String say(String html, String... pairs) {
		this.unknown.clear();
		List<Pair> phrases = new ArrayList<>();
		for (int i = 0; i < pairs.length; i += 2) {
			phrases.add(new Pair(pairs[i], pairs[i + 1]));
		}
		return new HtmlSpeech(new Book(phrases), Units.BOTH, this.unknown::add).say(html);
	}

	/** A few phrases; dates by the real books. */
	private record Book(List<Pair> pairs) implements Phrasebook {

		@Override
		public Language language() {
			return Language.SPANISH;
		}

		@Override
		public String say(String english) {
			return find(english).orElse(english);
		}

		@Override
		public Optional<String> find(String english) {
			return Optional
				.ofNullable(new Phrases(Map.of(), Map.of(), this.pairs, SpokenDatesFixture::say).say(english));
		}

		@Override
		public boolean knows(String english) {
			return find(english).isPresent();
		}

		@Override
		public String day(LocalDate day) {
			return day.toString();
		}

		@Override
		public String days(DayWindow window) {
			return window.toString();
		}

	}

}
