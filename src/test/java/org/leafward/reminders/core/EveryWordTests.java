package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.language.Language;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Units;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.core.Words.Counted;
import org.leafward.reminders.words.FakeLinks;
import org.leafward.reminders.words.SampleMessages;

import static org.assertj.core.api.Assertions.assertThat;

/** No key of the files is there for nothing: each stands in some message. */
class EveryWordTests {

	private static final LocalDate DAY = LocalDate.parse("2026-11-12");

	private static final Pattern SHOWN = Pattern.compile("‹([^›]+)›");

	/** Says its own names in place of words. */
	private static Words namesOfWords() {
		Map<String, String> words = new HashMap<>();
		Map<String, Counted> counts = new HashMap<>();
		for (Word word : Word.values()) {
			if (word.counted()) {
				counts.put(word.key(),
						new Counted(named(word, word.key() + ".one", false), named(word, word.key() + ".other", true)));
			}
			else {
				words.put(word.key(), named(word, word.key(), false));
			}
		}
		return new Words(words, counts);
	}

	private static String named(Word word, String name, boolean many) {
		return "‹" + name + "›"
				+ word.places(many).stream().map((place) -> "{" + place + "}").collect(Collectors.joining(" "));
	}

	private static Set<String> known() {
		Set<String> known = new TreeSet<>();
		for (Word word : Word.values()) {
			if (word.counted()) {
				known.add(word.key() + ".one");
				known.add(word.key() + ".other");
			}
			// Not shown.
			else if (word != Word.LEAVING) {
				known.add(word.key());
			}
		}
		return known;
	}

	private static List<Content> contents() {
		List<Content> contents = new ArrayList<>(SampleMessages.all().values());
		CareTask hold = TaskFixture.task("hold", TaskKind.HOLD_OFF, 0, DAY);
		CareTask ramp = TaskFixture.task("ramp", TaskKind.RAMP_DAY, 1, DAY);
		CareTask again = TaskFixture.task("again", TaskKind.DO, 2, DAY);
		CareTask a = TaskFixture.task("a", DAY);
		TaskText words = a.text();
		CareTask b = TaskFixture.saying(TaskFixture.task("b", DAY),
				new TaskText(words.title(), words.what(), "90 L", words.why(), words.otherwise(), words.caution()));
		contents.add(SampleMessages.content(Series.MORNING,
				List.of(SampleMessages.item(Topic.HOLD_OFF, hold), SampleMessages.item(Topic.TO_DO, again),
						SampleMessages.item(Topic.TO_DO, a), SampleMessages.item(Topic.TO_DO, b),
						new ReminderItem(TaskFixture.id("r"), Topic.RAMP, ramp, 1, null)),
				null));
		contents.add(SampleMessages.content(Series.SINGLE, List.of(SampleMessages.item(Topic.TO_DO, a)), null));
		contents.add(outlook(List.of(a)));
		contents.add(outlook(days(31)));
		contents.add(outlook(days(40)));
		return contents;
	}

	private static List<CareTask> days(int count) {
		return IntStream.range(0, count)
			.mapToObj((at) -> TaskFixture.task("t" + at, TaskKind.DO, 0, DAY.plusDays(at)))
			.toList();
	}

	private static Content outlook(List<CareTask> tasks) {
		return SampleMessages.content(Series.OUTLOOK, List.of(),
				new Outlook(DAY, tasks, List.of(), List.of(), List.of(), List.of(TaskFixture.task("g", DAY))));
	}

	@Test
	void isSaidSomewhere() {
		Wording wording = new Wording(Phrasebooks.english(), Units.BOTH, namesOfWords(), "");
		MessageWriter writer = new MessageWriter((content, speech, links) -> "{}");
		Set<String> shown = new TreeSet<>();
		// What is said to those only who read another language than the words are in.
		Wording spanish = new Wording(SampleMessages.BOOKS.of(Language.SPANISH), Units.BOTH, namesOfWords(), "");
		for (Content content : contents()) {
			for (Wording one : List.of(wording, spanish)) {
				MessageText message = writer.write(content, one, new FakeLinks());
				SHOWN.matcher(message.subject() + message.text().replace('\n', ' '))
					.results()
					.forEach((found) -> shown.add(found.group(1)));
			}
		}
		assertThat(known()).filteredOn((key) -> !shown.contains(key)).isEmpty();
		assertThat(shown).filteredOn((key) -> !known().contains(key)).isEmpty();
	}

}
