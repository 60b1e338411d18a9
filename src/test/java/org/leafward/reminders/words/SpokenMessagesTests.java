package org.leafward.reminders.words;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leafward.care.CareTask;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.core.AdvisoryNotice;
import org.leafward.reminders.core.Content;
import org.leafward.reminders.core.Outlook;
import org.leafward.reminders.core.ReminderItem;

import static org.assertj.core.api.Assertions.assertThat;

/** In Spanish no English is left besides names that people gave. */
class SpokenMessagesTests {

	/** Words that stand in almost every English text and in no Spanish one. */
	private static final Pattern ENGLISH = Pattern
		.compile("(?i)\\b(?:the|and|with|of|is|are|from|until|before|when|not|you|your|what|no more)\\b");

	private static final Pattern WORD = Pattern.compile("\\p{L}{4,}");

	/** Written alike in both languages, or names of products and the server. */
	private static final Set<String> ALIKE = Set.of("leafward", "green", "group", "street", "springfield", "help",
			"example", "azalea", "catawba", "floribunda", "kentucky", "kurume", "petunia", "plan");

	private static final Pattern ADDRESS = Pattern.compile("https://\\S+");

	private static String all(Content content, Language language, Units units) {
		MessageText message = SampleMessages.WORDS.write(content, new Speech(language, units), new FakeLinks());
		String text = message.subject() + "\n" + message.brief() + "\n" + message.text().replaceAll("\\s+", " ");
		text = ADDRESS.matcher(text).replaceAll("");
		for (String name : names(content)) {
			text = text.replace(name, "");
		}
		return text;
	}

	private static Set<String> names(Content content) {
		Outlook outlook = content.outlook();
		Stream<CareTask> ahead = (outlook == null) ? Stream.empty()
				: Stream
					.of(outlook.thisWeek(), outlook.nextWeek(), outlook.open(), outlook.holdOffs(), outlook.changed())
					.flatMap((list) -> list.stream());
		return Stream
			.concat(specialists(content),
					Stream.concat(content.items().stream().map(ReminderItem::task), ahead)
						.flatMap((task) -> Stream.of(task.siteName(), task.plant().replaceFirst(" \\([^()]*\\)$", ""))))
			.collect(Collectors.toCollection(() -> new TreeSet<>((one, other) -> (one.length() != other.length())
					? other.length() - one.length() : one.compareTo(other))));
	}

	/** What they wrote is said as they wrote it, in the units of the reader. */
	private static Stream<String> specialists(Content content) {
		return content.notices()
			.stream()
			.map(AdvisoryNotice::advisory)
			.flatMap((one) -> Stream.of(one.text(Language.ENGLISH), one.text(Language.SPANISH))
				.flatMap((text) -> Stream.of(text.headline(), text.what(), text.where(), text.when(), text.impacts(),
						text.toDo(), one.event().english(), one.event().spanish(),
						(one.reason() != null) ? one.reason() : text.headline())))
			.flatMap((text) -> Stream.concat(text.lines(), Stream.of(text.replace('\n', ' '))))
			.flatMap((line) -> Stream.of(Units.values()).map((units) -> units.in(line)));
	}

	@Test
	void noEnglishIsLeft() {
		SampleMessages.all().forEach((name, content) -> {
			for (Units units : Units.values()) {
				assertThat(ENGLISH.matcher(all(content, Language.SPANISH, units)).results().map(MatchResult::group))
					.as(name)
					.isEmpty();
			}
		});
	}

	/** The other way round: what both texts share is no word of English. */
	@Test
	void noWordStandsInBothBesidesThoseThatAreAlike() {
		Map<String, Set<String>> shared = new TreeMap<>();
		SampleMessages.all().forEach((name, content) -> {
			Set<String> both = words(all(content, Language.ENGLISH, Units.BOTH));
			both.retainAll(words(all(content, Language.SPANISH, Units.BOTH)));
			both.removeAll(ALIKE);
			if (!both.isEmpty()) {
				shared.put(name, both);
			}
		});
		assertThat(shared).isEmpty();
	}

	private static Set<String> words(String text) {
		return WORD.matcher(text)
			.results()
			.map((found) -> found.group().toLowerCase(Language.SPANISH.locale()))
			.collect(Collectors.toCollection(TreeSet::new));
	}

	@Test
	void oneKindOfUnitsIsEnough() {
		Content ramp = SampleMessages.all().get("morning");
		for (Language language : Language.values()) {
			assertThat(all(ramp, language, Units.METRIC)).doesNotContain("°F", " gal", "(1 in)");
			assertThat(all(ramp, language, Units.US)).doesNotContain("°C", "litr", " mm ");
			assertThat(all(ramp, language, Units.BOTH)).contains("(");
		}
	}

}
