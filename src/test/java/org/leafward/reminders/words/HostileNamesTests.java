package org.leafward.reminders.words;

import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.care.CareTask;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.core.Content;
import org.leafward.reminders.core.Outlook;
import org.leafward.reminders.core.ReminderItem;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/** Whatever people call their plants and sites, a message stays one, and theirs. */
class HostileNamesTests {

	private static final Speech SPANISH = new Speech(Language.SPANISH, Units.METRIC);

	static Stream<String> names() {
		return Stream.of("Ada\r\nBcc: x@example.org\r\n\r\nFree seeds", "Ada\nSubject: other", "a\u2028b\u2029c\u0085d",
				"\u202Egpj.exe\u202C", "\u2066\u2067inside\u2069", "<script>alert(1)</script>",
				"</title><img src=x onerror=alert(1)>", "\"' onclick='alert(1)", "&lt;b&gt; &amp;", "-- ", "-- \n-- \n",
				"x".repeat(10_000), "many words ".repeat(1_000), "\uD83C\uDF31".repeat(5_000), "half \uD83C char",
				"zero\u0000byte\u0007", "גן הירק (42)", "حديقة", "{day} {task} {n} {0} %s $1 \\1",
				"https://evil.example/", "jardín de Ágata", " ", "()", " ()", "a (".repeat(3_000) + ")".repeat(3_000),
				"\uFEFFmark");
	}

	private static List<Content> contents(String name) {
		List<Content> contents = SampleMessages.all()
			.values()
			.stream()
			// Words of advisories are bounded and plain by themselves (AdvisoryText).
			.map((content) -> new Content(content.person(), content.channel(), content.series(),
					content.items().stream().map((item) -> called(item, name)).toList(),
					called(content.outlook(), name), content.notices()))
			.toList();
		assertThat(contents).hasSizeGreaterThan(10);
		return contents;
	}

	private static ReminderItem called(ReminderItem item, String name) {
		return new ReminderItem(item.reminder(), item.topic(), called(item.task(), name), item.rampDays(),
				item.toldDay());
	}

	private static Outlook called(Outlook outlook, String name) {
		return (outlook == null) ? null
				: new Outlook(outlook.today(), called(outlook.thisWeek(), name), called(outlook.nextWeek(), name),
						called(outlook.open(), name), called(outlook.holdOffs(), name),
						called(outlook.changed(), name));
	}

	private static List<CareTask> called(List<CareTask> tasks, String name) {
		return tasks.stream().map((task) -> called(task, name)).toList();
	}

	/** Also words of rules, which an operator writes. */
	private static CareTask called(CareTask task, String name) {
		TaskText text = task.text();
		return new CareTask(task.id(), task.planting(), name + " (common boxwood)", task.site(), name, task.person(),
				task.rule(), task.season(), task.occurrence(), task.kind(), task.window(),
				new TaskText(text.title(), text.what(), text.amount(), text.why(), name, text.caution()), task.state(),
				(task.state() == TaskState.WITHDRAWN) ? name : null, task.sequence(), task.createdAt(),
				task.changedAt());
	}

	@ParameterizedTest
	@MethodSource("names")
	void stayNames(String name) {
		for (Content content : contents(name)) {
			for (Speech speech : List.of(Speech.USUAL, SPANISH)) {
				MessageText message = SampleMessages.WORDS.write(content, speech, new FakeLinks());
				isOneLine(message.subject());
				isOneLine(message.brief());
				assertThat(message.subject().codePoints().count()).isLessThanOrEqualTo(120);
				assertThat(message.brief().length()).isLessThanOrEqualTo(MessageText.LONGEST_BRIEF);
				isPlain(message.text());
				isTheSame(message);
				JsonNode root = JsonMapper.shared().readTree(message.content());
				assertThat(message.content().length()).isLessThanOrEqualTo(MessageText.LONGEST_CONTENT);
				assertThat(root.path("series").asString()).isEqualTo(content.series().code());
			}
		}
	}

	/** A header ends at CR LF (RFC 5322 section 2.2). */
	private static void isOneLine(String line) {
		assertThat(line.codePoints()).noneMatch(Character::isISOControl)
			.noneMatch((one) -> one == 0x2028 || one == 0x2029)
			.noneMatch((one) -> Character.getType(one) == Character.SURROGATE);
		assertThat(line).doesNotContain("\u202E", "\u2066", "\u2067");
	}

	private static void isPlain(String text) {
		assertThat(text.lines()).noneMatch((line) -> line.startsWith("Bcc:") || line.startsWith("Subject:"));
		assertThat(text.lines().filter((line) -> line.equals("-- "))).hasSize(1);
		assertThat(text.codePoints().filter((one) -> one != '\n')).noneMatch(Character::isISOControl)
			.noneMatch((one) -> (one >= 0x202A && one <= 0x202E) || one == 0x2066 || one == 0x2067 || one == 0xFEFF);
		// Whatever is set apart ends.
		assertThat(text.chars().filter((one) -> one == 0x2068).count())
			.isEqualTo(text.chars().filter((one) -> one == 0x2069).count());
	}

	private static void isTheSame(MessageText message) {
		Parser parser = Parser.htmlParser();
		parser.setTrackErrors(10);
		Document html = Jsoup.parse(message.html(), parser);
		assertThat(parser.getErrors()).isEmpty();
		assertThat(html.select("script, img, b, [onerror], [onclick]")).isEmpty();
		assertThat(html.select("a[href]").eachAttr("href")).allMatch((address) -> address.startsWith(FakeLinks.BASE));
		assertThat(html.select("title").text()).isEqualTo(html.select("h1").text());
		assertThat(message.html().length()).isLessThan(200_000);
	}

}
