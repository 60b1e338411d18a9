package org.leafward.reminders.words;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.ParseErrorList;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.core.Content;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Messages about the golden gardens in both languages and all units, looked at word by
 * word: subject, brief, text and form for programs of each, and of the usual speech the
 * HTML as well. {@code mvn test -Dtest=GoldenMessagesTests -Dleafward.golden=write}
 * writes them anew.
 */
class GoldenMessagesTests {

	private static final Path FOLDER = Path.of("src/test/resources/golden/messages");

	/** Kept in all units; the others show all that differs in one kind. */
	private static final Set<String> IN_ALL_UNITS = Set.of("morning", "ramp", "tonight", "outlook-of-one", "changes");

	private static final Pattern ADDRESS = Pattern.compile(":?\\s+https://\\S+");

	private static final Map<String, MessageText> MESSAGES = new TreeMap<>();

	private static final Map<String, Content> CONTENTS = SampleMessages.all();

	@BeforeAll
	static void write() throws IOException {
		for (Language language : Language.values()) {
			for (Units units : Units.values()) {
				CONTENTS.forEach((name, content) -> MESSAGES.put(name(name, language, units),
						SampleMessages.WORDS.write(content, new Speech(language, units), new FakeLinks())));
			}
		}
		if ("write".equals(System.getProperty("leafward.golden"))) {
			Files.createDirectories(FOLDER);
			for (Map.Entry<String, String> file : files().entrySet()) {
				Files.writeString(FOLDER.resolve(file.getKey()), file.getValue());
			}
		}
	}

	private static String name(String content, Language language, Units units) {
		return content + "_" + language.code() + "-" + units.code();
	}

	private static Map<String, String> files() {
		Map<String, String> files = new TreeMap<>();
		MESSAGES.forEach((name, message) -> {
			boolean both = name.endsWith("-both");
			if (both || IN_ALL_UNITS.contains(name.substring(0, name.indexOf('_')))) {
				files.put(name + ".txt", "Subject: %s\nBrief: %s\nLink: %s\n\n%s".formatted(message.subject(),
						message.brief(), message.link(), message.text()));
				files.put(name + ".json", pretty(message.content()));
			}
			if (both) {
				files.put(name + ".html", message.html());
			}
		});
		return files;
	}

	private static String pretty(String json) {
		JsonMapper mapper = JsonMapper.shared();
		return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(mapper.readTree(json)) + "\n";
	}

	@Test
	void wordsAreTheReviewedOnes() throws IOException {
		Map<String, String> files = files();
		for (Map.Entry<String, String> file : files.entrySet()) {
			assertThat(Files.readString(FOLDER.resolve(file.getKey()))).as(file.getKey()).isEqualTo(file.getValue());
		}
		try (Stream<Path> kept = Files.list(FOLDER)) {
			assertThat(kept.map((file) -> file.getFileName().toString()))
				.containsExactlyInAnyOrderElementsOf(files.keySet());
		}
	}

	/**
	 * jsoup follows the parsing rules of the HTML standard and reports what they mend.
	 */
	@Test
	void htmlHasNoMistakes() {
		MESSAGES.forEach((name, message) -> {
			ParseErrorList errors = ParseErrorList.tracking(10);
			Parser parser = Parser.htmlParser();
			parser.setTrackErrors(10);
			Jsoup.parse(message.html(), parser);
			errors.addAll(parser.getErrors());
			assertThat(errors).as(name).isEmpty();
		});
	}

	@Test
	void bothPartsSayTheSame() {
		MESSAGES.forEach((name, message) -> {
			String text = ADDRESS.matcher(message.text()).replaceAll("").replaceAll("(?m)^ *\\* |^-- $", " ");
			assertThat(Jsoup.parse(message.html()).body().text()).as(name)
				.isEqualTo(text.replaceAll("\\s+", " ").strip());
		});
	}

	@Test
	void bothPartsHaveTheSameLinks() {
		MESSAGES.forEach((name, message) -> {
			List<String> inText = new ArrayList<>();
			Matcher matcher = Pattern.compile("https://\\S+").matcher(message.text());
			while (matcher.find()) {
				inText.add(matcher.group());
			}
			Document html = Jsoup.parse(message.html());
			assertThat(html.select("a[href]").eachAttr("href")).as(name).isEqualTo(inText);
			assertThat(inText).as(name)
				.contains(FakeLinks.BASE + "/reminders", FakeLinks.BASE, FakeLinks.BASE + "/u/mail-"
						+ CONTENTS.get(name.substring(0, name.indexOf('_'))).series().code());
			assertThat(html.select("a").eachText()).as(name).noneMatch(String::isBlank);
		});
	}

	/** Nothing is fetched, so nobody is told that the mail was opened. */
	@Test
	void htmlIsOneColumnWithoutAnythingToLoad() {
		MESSAGES.forEach((name, message) -> {
			Document html = Jsoup.parse(message.html());
			Element root = html.selectFirst("html");
			assertThat(root.attr("lang")).as(name).isEqualTo(name.contains("_es-") ? "es" : "en");
			assertThat(root.attr("dir")).as(name).isEqualTo("ltr");
			assertThat(html.select("script, img, link, table, iframe, form, [src], [background], [class~=^on]"))
				.as(name)
				.isEmpty();
			assertThat(message.html()).as(name).doesNotContain("url(", "@import", "nowrap");
			assertThat(html.select("[style*=width]").eachAttr("style")).as(name)
				.allMatch(
						(style) -> !style.replace("max-width", "").replaceAll("border[a-z-]*", "").contains("width:"));
			assertThat(html.select("div[style*=overflow-wrap:anywhere]")).as(name).isNotEmpty();
		});
	}

	@Test
	void headingsGoDownStepByStep() {
		MESSAGES.forEach((name, message) -> {
			List<Element> headings = Jsoup.parse(message.html()).select("h1, h2, h3, h4, h5, h6");
			assertThat(headings.get(0).tagName()).as(name).isEqualTo("h1");
			for (int at = 1; at < headings.size(); at++) {
				int level = level(headings.get(at));
				assertThat(level).as(name).isGreaterThan(1).isLessThanOrEqualTo(level(headings.get(at - 1)) + 1);
			}
		});
	}

	private static int level(Element heading) {
		return Integer.parseInt(heading.tagName().substring(1));
	}

	/** RFC 5322 section 2.1.1; an address can't be broken. */
	@Test
	void linesAreShort() {
		MESSAGES.forEach((name, message) -> {
			assertThat(message.text().lines()).as(name)
				.allMatch((line) -> line.length() <= 78 || line.contains("https://"));
			assertThat(message.text()).as(name).doesNotContain("\r").endsWith("\n");
			assertThat(message.subject().length()).as(name).isLessThanOrEqualTo(120);
			assertThat(message.brief().length()).as(name).isLessThanOrEqualTo(MessageText.LONGEST_BRIEF);
			assertThat(message.html().length()).as(name).isLessThan(100_000);
		});
	}

	@Test
	void programsGetEveryTaskOrAreToldHowManyAreLeftOff() {
		MESSAGES.forEach((name, message) -> {
			assertThat(message.content().length()).as(name).isLessThanOrEqualTo(MessageText.LONGEST_CONTENT);
			JsonNode root = JsonMapper.shared().readTree(message.content());
			Content content = CONTENTS.get(name.substring(0, name.indexOf('_')));
			int told = root.path("items").size();
			int tasks = content.items().size();
			if (content.outlook() != null) {
				for (JsonNode list : root.path("outlook")) {
					told += list.size();
				}
				tasks += (int) Stream
					.of(content.outlook().thisWeek(), content.outlook().nextWeek(), content.outlook().open(),
							content.outlook().holdOffs(), content.outlook().changed())
					.flatMap(List::stream)
					.count();
			}
			assertThat(told + root.path("leftOff").asInt()).as(name).isEqualTo(tasks);
			assertThat(root.path("series").asString()).as(name).isEqualTo(content.series().code());
		});
		assertThat(JsonMapper.shared().readTree(MESSAGES.get("outlook_en-both").content()).path("leftOff").asInt())
			.as("one is long enough")
			.isPositive();
	}

	@Test
	void unitsMakeADifference() {
		Map<String, Integer> different = new LinkedHashMap<>();
		CONTENTS.keySet().forEach((name) -> {
			for (Language language : Language.values()) {
				Set<String> texts = Set.copyOf(Stream.of(Units.values())
					.map((units) -> MESSAGES.get(name(name, language, units)).text())
					.toList());
				different.merge(language.code(), texts.size() - 1, Integer::sum);
			}
		});
		assertThat(different).hasSize(2).allSatisfy((language, count) -> assertThat(count).isGreaterThan(4));
	}

}
