package org.leafward.e2e;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.words.FakeLinks;
import org.leafward.reminders.words.SampleMessages;

import static org.assertj.core.api.Assertions.assertThat;

/** The HTML of messages in a real browser, by day and at night. */
class MessagesOnAPhoneTests {

	private static final int PHONE = 390;

	/** WCAG 2.2 success criterion 1.4.10 asks for this one. */
	private static final int NARROWEST = 320;

	private static Browser browser;

	@TempDir
	private static Path folder;

	@BeforeAll
	static void open() {
		browser = Browser.open();
	}

	@AfterAll
	static void close() {
		if (browser != null) {
			browser.close();
		}
	}

	private static Map<String, String> pages() {
		Speech spanish = new Speech(Language.SPANISH, Units.BOTH);
		Map<String, String> pages = new LinkedHashMap<>();
		SampleMessages.all()
			.forEach((name, content) -> pages.put(name,
					SampleMessages.WORDS.write(content, spanish, new FakeLinks()).html()));
		String word = "Donaudampfschifffahrt".repeat(100);
		CareTask task = TaskFixture.saying(TaskFixture.task("long", TaskKind.DO, 0, LocalDate.parse("2026-11-12")),
				new TaskText(word, word, word, word, word, word));
		pages.put("long-words",
				SampleMessages.WORDS
					.write(SampleMessages.content(Series.MORNING, List.of(SampleMessages.item(Topic.TO_DO, task)),
							null), Speech.USUAL, new FakeLinks())
					.html());
		return pages;
	}

	private static void show(String name, String html) throws IOException {
		Path file = folder.resolve(name + ".html");
		Files.writeString(file, html);
		browser.driver().get(file.toUri().toString());
	}

	private static void at(String scheme) {
		browser.driver()
			.executeCdpCommand("Emulation.setEmulatedMedia",
					Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
	}

	@Test
	void nothingHasToBePushedSideways() throws IOException {
		for (Map.Entry<String, String> page : pages().entrySet()) {
			for (int width : new int[] { PHONE, NARROWEST }) {
				browser.width(width);
				show(page.getKey(), page.getValue());
				assertThat(browser.pageWidth()).as("%s at %d", page.getKey(), width).isLessThanOrEqualTo(width);
			}
		}
	}

	@Test
	void everybodyCanReadThemByDayAndAtNight() throws IOException {
		browser.width(PHONE);
		Map<String, String> pages = pages();
		for (String name : List.of("morning", "tonight", "outlook-of-one", "fell-away")) {
			for (String scheme : List.of("light", "dark")) {
				at(scheme);
				show(name, String.valueOf(pages.get(name)));
				assertThat(browser.violations()).as("%s, %s", name, scheme).isEmpty();
			}
		}
		at("light");
	}

}
