package org.leafward.feeds.ical;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.calendars.PlainText;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.CalendarWriter.Head;
import org.leafward.feeds.ical.FeedReading.Seen;
import org.leafward.measure.DayWindow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.leafward.feeds.core.CareTaskFixture.ENTRIES;
import static org.leafward.feeds.core.CareTaskFixture.CHANGED;
import static org.leafward.feeds.core.CareTaskFixture.aTask;

class CalendarWriterTests {

	private static final String ABOUT = "What to do; what to leave, and when.\nDates move with the weather.";

	static final Head HEAD = new Head("Roots, \"shoots\"; and \\leaves", ABOUT, "en");

	@Test
	void writesWhatAClientReadsBack() {
		List<FeedEntry> entries = entries(aTask().numbered(1).build(),
				aTask().numbered(2)
					.of(TaskKind.HOLD_OFF)
					.titled("Leave unpruned")
					.on("2026-08-10", "2026-10-31")
					.build(),
				aTask().numbered(3).on("2026-12-31", "2026-12-31").withdrawn("31 mm of rain fell.", CHANGED).build());
		byte[] feed = write(entries);
		assertThat(IcsLinter.problems(feed, write(entries))).isEmpty();
		assertThat(FeedReading.read(feed)).isEqualTo(entries.stream().map(Seen::of).toList());
	}

	@Test
	void anEmptyCalendarShowsThatItWorks() {
		List<FeedEntry> notice = List.of(ENTRIES.nothingPlanned(new UUID(1, 2), CHANGED));
		byte[] feed = write(notice);
		assertThat(IcsLinter.problems(feed, write(notice))).isEmpty();
		assertThat(FeedReading.read(feed)).containsExactly(Seen.of(notice.get(0)));
		assertThatIllegalArgumentException().isThrownBy(() -> write(List.of()));
	}

	/** Digits of Egypt, the dotless i of Turkish and a zone far from UTC. */
	@ParameterizedTest
	@CsvSource({ "ar-EG-u-nu-arab,Pacific/Auckland", "tr,America/Caracas", "th-TH-u-ca-buddhist-nu-thai,UTC" })
	void writesTheSameOctetsUnderAnyLocaleAndZone(String locale, String zone) {
		byte[] expected = write(entries(aTask().build(), aTask().numbered(2).withdrawn("rain", CHANGED).build()));
		Locale localeBefore = Locale.getDefault();
		TimeZone zoneBefore = TimeZone.getDefault();
		try {
			Locale.setDefault(Locale.forLanguageTag(locale));
			TimeZone.setDefault(TimeZone.getTimeZone(zone));
			byte[] octets = write(entries(aTask().build(), aTask().numbered(2).withdrawn("rain", CHANGED).build()));
			assertThat(IcsLinter.problems(octets, expected)).isEmpty();
		}
		finally {
			Locale.setDefault(localeBefore);
			TimeZone.setDefault(zoneBefore);
		}
	}

	@Test
	void staysBelowTheSizeThatClientsTake() {
		TaskText words = new TaskText("Water", "Wörds, and; more. ".repeat(60), null, "Why.", null, null);
		List<FeedEntry> entries = IntStream.range(0, 2000)
			.mapToObj((i) -> aTask().numbered(i).saying(words).on("2026-0" + (1 + i % 9) + "-01", "2026-12-31").build())
			.map((task) -> ENTRIES.of(task))
			.toList();
		byte[] feed = write(entries);
		assertThat(IcsLinter.problems(feed)).isEmpty();
		assertThat(feed).hasSizeGreaterThan(890_000);
		List<Seen> seen = FeedReading.read(feed);
		assertThat(seen).hasSizeBetween(500, 1000);
		assertThat(seen).filteredOn((each) -> each.from().getMonthValue() == 1).hasSize(223);
		assertThat(seen).noneMatch((each) -> each.from().getMonthValue() == 9);
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6 })
	void hostileTextReadsBackAsCleaned(long seed) {
		Random random = new Random(seed);
		List<FeedEntry> entries = new ArrayList<>();
		for (int i = 0; i < 60; i++) {
			entries.add(hostile(i, random));
		}
		byte[] feed = write(entries);
		assertThat(IcsLinter.problems(feed, write(entries))).as("seed %s", seed).isEmpty();
		List<Seen> cleaned = entries.stream()
			.map(Seen::of)
			.map((each) -> new Seen(each.uid(), PlainText.line(each.summary()), PlainText.clean(each.description()),
					each.from(), each.end(), each.status()))
			.toList();
		assertThat(FeedReading.read(feed)).as("seed %s", seed).isEqualTo(cleaned);
	}

	private static FeedEntry hostile(int number, Random random) {
		FeedEntry plain = ENTRIES.of(aTask().numbered(number).build());
		return new FeedEntry(plain.uid(), plain.sequence(), plain.created(), plain.changed(),
				DayWindow.of(plain.window().from()), "s" + HostileText.some(random, 60) + "e",
				"s" + HostileText.some(random, (number == 0) ? 10_000 : 300) + "e", plain.url(), plain.kind(),
				plain.categories(), plain.standing());
	}

	static List<FeedEntry> entries(CareTask... tasks) {
		return List.of(tasks).stream().map((task) -> ENTRIES.of(task)).toList();
	}

	static byte[] write(List<FeedEntry> entries) {
		return new CalendarWriter()
			.write(HEAD, entries, Component.EVENT, null, Before.nothing(Instant.parse("2026-03-10T12:00:00Z")))
			.octets();
	}

	private static String text(byte[] octets) {
		return new String(octets, StandardCharsets.UTF_8);
	}

}
