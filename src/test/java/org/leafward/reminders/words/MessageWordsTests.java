package org.leafward.reminders.words;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class MessageWordsTests {

	private static final Path BUILT_IN = Path.of("config/messages");

	@TempDir
	private Path folder;

	private String built(String language) throws IOException {
		return Files.readString(BUILT_IN.resolve(language).resolve("messages.yaml"));
	}

	private MessageWords with(String language, String text) throws IOException {
		Path own = this.folder.resolve("messages").resolve(language);
		Files.createDirectories(own);
		Files.writeString(own.resolve("messages.yaml"), text);
		return new MessageWords(new KnowledgeFiles(this.folder.toString()), new KnowledgeReader(), SampleMessages.BOOKS,
				"");
	}

	private void isRefused(String text, String... words) {
		assertThatExceptionOfType(BrokenKnowledge.class).isThrownBy(() -> with("es", text))
			.satisfies(
					(broken) -> assertThat(broken.getMessage()).contains("messages/es/messages.yaml").contains(words));
	}

	@Test
	void anOperatorsOwnFileWins() throws IOException {
		MessageWords own = with("en", built("en").replace("link-details: Details", "link-details: Read on"));
		assertThat(own.write(SampleMessages.all().get("hold-off"), Speech.USUAL, new FakeLinks()).text())
			.contains("Read on:\n    https://")
			.doesNotContain("Details", "Green Group");
		assertThat(own
			.write(SampleMessages.all().get("hold-off"), new Speech(Language.SPANISH, Units.BOTH), new FakeLinks())
			.text()).contains("Detalles:\n    https://");
	}

	@Test
	void aMissingWordIsNamed() throws IOException {
		isRefused(built("es").replaceFirst("  label-when: .*\n", ""), "'label-when' is missing", "add it");
		isRefused(built("es").replaceFirst("(?s)  more:\n.*", ""), "'more' is missing");
	}

	@Test
	void aWordThatNoMessageHasIsNamedWithItsLine() throws IOException {
		long line = 1 + built("es").lines().takeWhile((one) -> !one.startsWith("  label-when:")).count();
		isRefused(built("es").replace("  label-when:", "  label-wen: Cuándo\n  label-when:"),
				"messages.yaml:%d:".formatted(line), "no message says 'label-wen'");
		isRefused(built("es").replace("counts:\n", "counts:\n  label-when: {one: a, other: b}\n"),
				"no message says 'label-when' here");
	}

	@Test
	void otherPlacesAreNamed() throws IOException {
		isRefused(built("es").replace("'Ahora es el {day}: {task}'", "'Ahora es el {día}: {task}'"),
				"has other places than {day}, {task}", "write each of them");
		isRefused(built("es").replace("label-when: Cuándo", "label-when: 'Cuándo {n}'"), "no places", "without braces");
		isRefused(built("es").replace("other: '{n} más'", "other: 'más'"), "has other places than {n}");
	}

	@Test
	void whatIsNoFileOfWordsIsRefused() {
		isRefused("title: Palabras\n", "'words' is missing", "'counts' is missing");
		isRefused("title: Palabras\nwords: {label-when: 7}\ncounts: {}\n", "text is wanted");
		isRefused("title: Palabras\nwords: {label-when: " + "x".repeat(201) + "}\ncounts: {}\n", "201 characters");
		isRefused("title: Palabras\nwords: {}\ncounts: {more: {one: 1}}\n", "'other' is missing");
		isRefused(": [", "messages.yaml");
	}

	@Test
	void theContactIsBounded() {
		assertThatIllegalArgumentException()
			.isThrownBy(() -> new MessageWords(new KnowledgeFiles(""), new KnowledgeReader(), SampleMessages.BOOKS,
					"x".repeat(201)))
			.withMessageContaining("leafward.mail.contact");
	}

	@Test
	void wordingsAreKeptForThoseWhoSpeakAlike() {
		Speech speech = new Speech(Language.SPANISH, Units.US);
		assertThat(SampleMessages.WORDS.of(speech)).isSameAs(SampleMessages.WORDS.of(speech))
			.isNotSameAs(SampleMessages.WORDS.of(Speech.USUAL));
	}

}
