package org.leafward.language.core;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leafward.language.core.Phrases.Pair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.junit.jupiter.api.Assertions.assertTimeout;

class PhrasesTests {

	private static final Map<String, String> TEXTS = Map.of("Water the bed.", "Riegue la cama.", "Mulch it.",
			"Ponga acolchado.", "Water the bed. Mulch it.", "Riegue y acolche.", "Rest", "Descanse", "Stay, and wait",
			"Quédese y espere");

	private static Phrases phrases(Pair... pairs) {
		Map<String, List<Pair>> groups = new LinkedHashMap<>();
		groups.put("depth", List.of(new Pair("{n} mm", "{1} mm")));
		groups.put("soil", List.of(new Pair("saline", "salino"), new Pair("saline-sodic", "salino-sódico")));
		groups.put("wet", List.of(new Pair("{depth} of water", "{1} de agua")));
		return new Phrases(TEXTS, groups, List.of(pairs), (date) -> date.startsWith("Thu") ? "jue" : null);
	}

	@Test
	void placesTakeOnlyTheirKind() {
		Phrases book = phrases(new Pair("About {n} litres.", "Unos {1} litros."), new Pair("On {date}.", "El {1}."),
				new Pair("At {clock}.", "A las {1}."), new Pair("The soil is {soil}.", "El suelo es {1}."),
				new Pair("Give {wet}.", "Dé {1}."));
		assertThat(book.say("About 1,500.5 litres.")).isEqualTo("Unos 1,500.5 litros.");
		assertThat(book.say("About some litres.")).isNull();
		assertThat(book.say("On Thu 12 Nov 2026.")).isEqualTo("El jue.");
		assertThat(book.say("On Xyz 99 Foo 2026.")).as("looks like a date and is none").isNull();
		assertThat(book.say("At 18:00.")).isEqualTo("A las 18:00.");
		assertThat(book.say("The soil is saline.")).isEqualTo("El suelo es salino.");
		assertThat(book.say("The soil is saline-sodic.")).as("the longest member wins")
			.isEqualTo("El suelo es salino-sódico.");
		assertThat(book.say("Give 5 mm of water.")).as("a group in a group").isEqualTo("Dé 5 mm de agua.");
	}

	@Test
	void placesMayChangeTheirOrder() {
		assertThat(phrases(new Pair("{n} of {n}: {text}", "{3} ({1}/{2})")).say("2 of 3: Rest"))
			.isEqualTo("Descanse (2/3)");
	}

	@Test
	void sentencesAreSaidEachAndAsManyTogetherAsThereAreWordsFor() {
		Phrases book = phrases(new Pair("About {n} litres.", "Unos {1} litros."));
		assertThat(book.say("About 3 litres. Mulch it.")).isEqualTo("Unos 3 litros. Ponga acolchado.");
		assertThat(book.say("Water the bed. Mulch it. About 3 litres.")).isEqualTo("Riegue y acolche. Unos 3 litros.");
	}

	@Test
	void wordsMayHaveInThemWhatStandsBetweenPlaces() {
		Phrases book = phrases(new Pair("Do: {text}, {own}, {date}", "Hacer: {1}, {2}, {3}"));
		assertThat(book.say("Do: Stay, and wait, hedge, Thu 12 Nov")).isEqualTo("Hacer: Quédese y espere, hedge, jue");
		assertThat(book.say("Do: Rest, hedge, old, Thu 12 Nov")).isEqualTo("Hacer: Descanse, hedge, old, jue");
		assertThat(book.say("Do: Prune, and wait, hedge, Thu 12 Nov")).isNull();
	}

	@Test
	void aTextIsSaidWholeOrNotAtAll() {
		Phrases book = phrases(new Pair("Today: {text}", "Hoy: {1}"));
		assertThat(book.say("Water the bed. Prune the elm.")).isNull();
		assertThat(book.say("Today: Prune the elm.")).isNull();
		assertThat(book.say("")).isNull();
	}

	@Test
	void wordsOfPeopleStayAndANameIsNoSentence() {
		Phrases book = phrases(new Pair("Left out: {own}", "Omitida: {1}"),
				new Pair("{name} allows none.", "{1} no permite nada."));
		assertThat(book.say("Left out: No time. Sorry!")).isEqualTo("Omitida: No time. Sorry!");
		assertThat(book.say("St. Lucie County allows none.")).isEqualTo("St. Lucie County no permite nada.");
		assertThat(book.say("Prune the elm. Elm County allows none.")).as("not half in English").isNull();
	}

	@Test
	void aPlaceThatIsNoneIsRefusedByName() {
		assertThatIllegalArgumentException().isThrownBy(() -> phrases(new Pair("{x} there", "{1}")))
			.withMessageContaining("{x}");
		assertThatIllegalArgumentException().isThrownBy(() -> phrases(new Pair("{n} there", "{2}")))
			.withMessageContaining("{2}");
	}

	@Test
	void nestingEnds() {
		Phrases book = phrases(new Pair("Today: {text}", "Hoy: {1}"));
		assertThat(book.say("Today: Today: Rest")).isEqualTo("Hoy: Hoy: Descanse");
		assertThat(book.say("Today: ".repeat(50) + "Rest")).isNull();
	}

	@Test
	void onlyWholeTextsAreSaidAtAnyLength() {
		String text = "A long text. ".repeat(500);
		assertThat(new Phrases(Map.of(text, "Un texto largo."), Map.of(), List.of(), (date) -> date).say(text))
			.isEqualTo("Un texto largo.");
	}

	@Test
	void hostileTextTakesNoTime() {
		Phrases book = phrases(new Pair("{own} on {own} (of {own}).", "{1} {2} {3}"),
				new Pair("Today: {text}", "Hoy: {1}"), new Pair("{text}, for {text}", "{1}, {2}"),
				new Pair("{name} allows {name}.", "{1} {2}"));
		for (String part : List.of("a on (of b). ", "Today: A. ", "St. St. ", "Rest, for ", "Mulch it. ", "A. ",
				"1 of 2: ", "x allows ", "“")) {
			for (int length : List.of(1_490, 10_000)) {
				String text = part.repeat(length / part.length());
				assertTimeout(Duration.ofSeconds(1), () -> book.say(text), () -> part + length);
			}
		}
	}

}
