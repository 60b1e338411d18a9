package org.leafward.feeds.ical;

import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.calendars.PlainText;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.CalendarWriter.Written;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.feeds.core.CareTaskFixture.CHANGED;
import static org.leafward.feeds.core.CareTaskFixture.ENTRIES;
import static org.leafward.feeds.core.CareTaskFixture.aTask;

/**
 * What a calendar says and leaves out, property by property. Sections are of RFC 5545
 * where nothing else is said; where it leaves a choice, the choice is the one that most
 * clients get along with.
 */
class PropertyRulesTests {

	private static final Instant NOW = Instant.parse("2026-03-10T12:00:00Z");

	/** One of each kind and each state, of one day and of several. */
	private static List<CareTask> tasks() {
		List<CareTask> tasks = new ArrayList<>();
		for (TaskKind kind : TaskKind.values()) {
			for (TaskState state : TaskState.values()) {
				tasks.add(aTask().numbered(tasks.size())
					.of(kind)
					.on("2026-04-02", (tasks.size() % 2 == 0) ? "2026-04-02" : "2026-04-09")
					.in(state, (state == TaskState.WITHDRAWN) ? "31 mm, of rain; fell." : null)
					.build());
			}
		}
		return tasks;
	}

	private static List<FeedEntry> entries() {
		return tasks().stream().map(ENTRIES::of).toList();
	}

	private static byte[] write(List<FeedEntry> entries, Component form, LocalTime alarm) {
		byte[] octets = new CalendarWriter().write(CalendarWriterTests.HEAD, entries, form, alarm, Before.nothing(NOW))
			.octets();
		assertThat(IcsLinter.problems(octets)).isEmpty();
		return octets;
	}

	/** Unfolded content lines of a document of one of each. */
	private static List<String> lines(Component form, LocalTime alarm) {
		return lines(write(entries(), form, alarm));
	}

	private static List<String> lines(byte[] octets) {
		return List.of(new String(octets, StandardCharsets.UTF_8).replace("\r\n ", "").split("\r\n"));
	}

	private static List<String> values(List<String> lines, String name) {
		return lines.stream()
			.filter((line) -> line.startsWith(name + ":") || line.startsWith(name + ";"))
			.map((line) -> line.substring(name.length()))
			.toList();
	}

	/** Section 3.7.2 wants none; with one, RFC 5546 section 3.2.1 wants an ORGANIZER. */
	@ParameterizedTest
	@EnumSource
	void methodIsOmitted(Component form) {
		List<String> lines = lines(form, null);
		assertThat(values(lines, "METHOD")).isEmpty();
		assertThat(values(lines, "ORGANIZER")).isEmpty();
		assertThat(values(lines, "ATTENDEE")).isEmpty();
	}

	/** Section 3.8.4.7. It hangs on the task alone, whatever is told of it. */
	@ParameterizedTest
	@EnumSource
	void uidIsStableForLife(Component form) {
		CareTask task = aTask().numbered(7).build();
		CareTask later = aTask().numbered(7)
			.titled("Something else")
			.forPlant("another")
			.at("Elsewhere")
			.on("2026-06-01", "2026-06-02")
			.in(TaskState.DONE, null)
			.build();
		List<String> uids = Stream.of(task, later)
			.flatMap((one) -> values(lines(write(List.of(ENTRIES.of(one)), form, null)), "UID").stream())
			.toList();
		assertThat(uids).containsExactly(":" + task.id() + "@leafward", ":" + task.id() + "@leafward");
		assertThat(new HashSet<>(values(lines(form, null), "UID"))).hasSize(tasks().size());
	}

	/**
	 * Section 3.8.7.2: without METHOD it is the last revision, and no moment of sending.
	 */
	@ParameterizedTest
	@EnumSource
	void dtstampIsTheLastRevision(Component form) {
		Instant revised = Instant.parse("2199-03-04T05:06:07Z");
		byte[] octets = write(List.of(ENTRIES.of(aTask().withdrawn("rain", revised).build())), form, null);
		assertThat(values(lines(octets), "DTSTAMP")).containsExactly(":21990304T050607Z");
		assertThat(values(lines(form, null), "DTSTAMP")).isEqualTo(values(lines(form, null), "LAST-MODIFIED"))
			.allMatch((value) -> value.endsWith("Z"));
	}

	/** Section 3.8.7.3. One client takes only what is later than what it has. */
	@ParameterizedTest
	@EnumSource
	void lastModifiedRisesWithEveryVisibleChange(Component form) {
		Instant later = NOW.plusSeconds(3600);
		for (CareTask changed : List.of(aTask().titled("Other words").build(), aTask().at("Elsewhere").build(),
				aTask().on("2026-04-03", "2026-04-10").build(), aTask().in(TaskState.DONE, null).build())) {
			Written first = first(form, aTask().build());
			assertThat(stamp(next(form, first, later, null, changed)).modified()).as("%s", changed).isEqualTo(later);
		}
		Written first = first(form, aTask().build());
		Written rings = next(form, first, later, LocalTime.of(8, 0), aTask().build());
		assertThat(stamp(rings).modified()).isEqualTo(later);
		assertThat(next(form, rings, later.plusSeconds(60), LocalTime.of(8, 0), aTask().build()).octets())
			.isEqualTo(rings.octets());
		assertThat(next(form, first, later, null, aTask().build()).octets()).isEqualTo(first.octets());
	}

	/** Section 3.8.7.4: it starts with that of the task and only ever goes up. */
	@ParameterizedTest
	@EnumSource
	void sequenceNeverFalls(Component form) {
		Written document = first(form, aTask().build());
		int before = stamp(document).sequence();
		assertThat(before).isEqualTo(3);
		for (int i = 1; i < 6; i++) {
			document = next(form, document, NOW.plusSeconds(i), null, aTask().titled("Words " + i).build());
			assertThat(stamp(document).sequence()).isEqualTo(before + i);
		}
		document = next(form, document, NOW.plusSeconds(9), null, aTask().numbered(1).build());
		document = next(form, document, NOW.plusSeconds(10), null, aTask().build());
		assertThat(stamp(document).sequence()).isEqualTo(before + 5);
	}

	private static Written first(Component form, CareTask task) {
		return new CalendarWriter().write(CalendarWriterTests.HEAD, List.of(ENTRIES.of(task)), form, null,
				Before.nothing(NOW));
	}

	private static Written next(Component form, Written before, Instant now, LocalTime alarm, CareTask task) {
		return new CalendarWriter().write(CalendarWriterTests.HEAD, List.of(ENTRIES.of(task)), form, alarm,
				new Before(before.octets(), before.aheadBy(), now));
	}

	private static FeedReading.Stamp stamp(Written document) {
		return FeedReading.stamps(document.octets()).values().iterator().next();
	}

	/** Section 3.8.7.1. */
	@ParameterizedTest
	@EnumSource
	void createdIsWhenTheTaskWasPlanned(Component form) {
		assertThat(values(lines(form, null), "CREATED")).hasSize(tasks().size()).containsOnly(":20260101T000000Z");
	}

	/**
	 * Sections 3.6.1, 3.8.2.2 and 3.8.2.4: days, and the end is the day behind the last.
	 */
	@Test
	void dtstartAndDtendAreDaysAndTheEndIsExclusive() {
		List<String> lines = lines(write(CalendarWriterTests.entries(aTask().on("2026-02-28", "2026-02-28").build(),
				aTask().numbered(2).on("2026-12-30", "2027-01-02").build()), Component.EVENT, null));
		assertThat(values(lines, "DTSTART")).containsExactly(";VALUE=DATE:20260228", ";VALUE=DATE:20261230");
		assertThat(values(lines, "DTEND")).containsExactly(";VALUE=DATE:20260301", ";VALUE=DATE:20270103");
		assertThat(values(lines, "DURATION")).isEmpty();
	}

	/** Section 3.2.19. There are no times of day, so no zone has to be told. */
	@ParameterizedTest
	@EnumSource
	void timedWorkdaysAreNotThereSoNoZoneIs(Component form) {
		List<String> lines = lines(form, LocalTime.of(8, 0));
		assertThat(lines).noneMatch((line) -> line.contains("TZID") || line.contains("VTIMEZONE"));
		assertThat(values(lines, "DTSTART")).isNotEmpty().allMatch((value) -> value.matches(";VALUE=DATE:\\d{8}"));
	}

	/**
	 * Section 3.8.1.11. Some clients hide what is cancelled, some strike it out and some
	 * show it as any other, so words say it, nothing rings, and it goes after 30 days.
	 */
	@Test
	void statusCancelledStaysForThirtyDaysAndSaysSo() {
		CareTask gone = aTask().withdrawn("31 mm of rain fell.", CHANGED).build();
		List<String> lines = lines(write(List.of(ENTRIES.of(gone)), Component.EVENT, LocalTime.of(8, 0)));
		assertThat(values(lines, "STATUS")).containsExactly(":CANCELLED");
		assertThat(values(lines, "SUMMARY").get(0)).startsWith(":No longer needed: ");
		assertThat(values(lines, "TRANSP")).containsExactly(":TRANSPARENT");
		assertThat(lines).doesNotContain("BEGIN:VALARM");
		LocalDate day = LocalDate.of(2026, 3, 4);
		assertThat(new FeedWindow(day.plusDays(30), 180, 400).keeps(gone)).isTrue();
		assertThat(new FeedWindow(day.plusDays(31), 180, 400).keeps(gone)).isFalse();
		assertThat(values(lines(Component.EVENT, null), "STATUS")).containsOnly(":CONFIRMED", ":CANCELLED");
	}

	/** Section 3.6.2: to-dos have a document of their own, as many clients drop them. */
	@Test
	void vtodoHasADocumentOfItsOwn() {
		assertThat(lines(Component.EVENT, null)).doesNotContain("BEGIN:VTODO").contains("BEGIN:VEVENT");
		List<String> todos = lines(Component.TODO, null);
		assertThat(todos).doesNotContain("BEGIN:VEVENT").contains("BEGIN:VTODO");
		assertThat(values(todos, "DUE")).hasSize(tasks().size())
			.containsOnly(";VALUE=DATE:20260402", ";VALUE=DATE:20260409");
		// Section 3.8.2.3: before DUE, so a to-do of one day has none.
		assertThat(values(todos, "DTSTART")).hasSize(tasks().size() / 2);
		assertThat(values(todos, "STATUS")).containsOnly(":NEEDS-ACTION", ":COMPLETED", ":CANCELLED");
		assertThat(values(todos, "COMPLETED")).hasSize(TaskKind.values().length);
		assertThat(values(todos, "PERCENT-COMPLETE")).hasSize(TaskKind.values().length).containsOnly(":100");
	}

	/** Section 3.8.1.12. */
	@Test
	void summaryIsOneShortLine() {
		FeedEntry entry = ENTRIES
			.of(aTask().titled("Cut\r\nback\u2028all ".repeat(9)).forPlant("hedge\nat the gate ".repeat(9)).build());
		String summary = values(lines(write(List.of(entry), Component.EVENT, null)), "SUMMARY").get(0).substring(1);
		assertThat(summary).doesNotContain("\\n").startsWith("Cut back all");
		assertThat(PlainText.length(summary)).isLessThanOrEqualTo(60);
	}

	/** Section 3.8.1.5: one, and small enough for a year of them. */
	@Test
	void descriptionIsOnePlainTextOfAKilobyteAtMost() {
		String long_ = "Ünder the leaves. ".repeat(600);
		FeedEntry entry = ENTRIES.of(aTask().saying(new TaskText("Spray", long_, long_, long_, null, null)).build());
		List<String> found = values(lines(write(List.of(entry), Component.EVENT, null)), "DESCRIPTION");
		// The first is the calendar's own.
		assertThat(found).hasSize(2);
		assertThat(entry.description().getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(1000);
		assertThat(lines(Component.EVENT, null)).noneMatch((line) -> line.contains("ALTREP") || line.contains("X-ALT"));
	}

	/** Section 3.8.4.6: of type URI, so nothing in it is escaped; no secret is in it. */
	@ParameterizedTest
	@EnumSource
	void urlIsTheTasksPage(Component form) {
		List<String> urls = values(lines(form, null), "URL");
		assertThat(urls)
			.isEqualTo(tasks().stream().map((task) -> ":https://leafward.example/tasks/" + task.id()).toList());
	}

	/** Section 3.8.1.2. Some clients split at commas even where they are escaped. */
	@ParameterizedTest
	@EnumSource
	void categoriesAreFewAndWithoutCommas(Component form) {
		List<String> categories = values(lines(form, null), "CATEGORIES");
		assertThat(categories).hasSize(tasks().size())
			.allMatch((value) -> value.split(",").length == 2 && !value.contains("\\"))
			.contains(":Plant care,To do", ":Plant care,Hold-off", ":Plant care,Look for");
	}

	/** Sections 3.8.1.6 and 3.8.1.7: where somebody lives is nobody's business. */
	@ParameterizedTest
	@EnumSource
	void locationAndGeoAreLeftOut(Component form) {
		assertThat(values(lines(form, null), "GEO")).isEmpty();
		assertThat(values(lines(form, null), "LOCATION")).isEmpty();
	}

	/** Section 3.8.1.1. */
	@ParameterizedTest
	@EnumSource
	void attachIsLeftOut(Component form) {
		assertThat(values(lines(form, LocalTime.of(8, 0)), "ATTACH")).isEmpty();
	}

	/** Section 3.8.2.7: a fortnight of pruning keeps nobody from a meeting. */
	@Test
	void transpIsTransparent() {
		assertThat(values(lines(Component.EVENT, null), "TRANSP")).hasSize(tasks().size()).containsOnly(":TRANSPARENT");
		VEvent event = FeedReading.calendar(write(entries(), Component.EVENT, null)).getEvents().get(0);
		assertThat(event.getTransparency().isTransparent()).isTrue();
		// Section 3.6.2 has none for to-dos.
		assertThat(values(lines(Component.TODO, null), "TRANSP")).isEmpty();
	}

	/** Section 3.8.1.3: public where nothing is said, which no client can misread. */
	@ParameterizedTest
	@EnumSource
	void classIsLeftOut(Component form) {
		assertThat(values(lines(form, null), "CLASS")).isEmpty();
	}

	/** Sections 3.6.6 and 3.8.6.3. */
	@ParameterizedTest
	@EnumSource
	void valarmIsOffUnlessWantedAndRingsInTheMorning(Component form) {
		assertThat(lines(form, null)).doesNotContain("BEGIN:VALARM");
		byte[] octets = write(entries(), form, LocalTime.of(7, 30));
		List<String> lines = lines(octets);
		long open = entries().stream().filter((entry) -> entry.standing() == FeedEntry.Standing.OPEN).count();
		assertThat(values(lines, "BEGIN")).filteredOn(":VALARM"::equals).hasSize((int) open);
		assertThat(values(lines, "ACTION")).containsOnly(":DISPLAY").hasSize((int) open);
		assertThat(values(lines, "TRIGGER")).hasSize((int) open)
			.allMatch((value) -> value.matches(";RELATED=(START|END):PT7H30M"));
		// A to-do of one day has no start.
		assertThat(lines).noneMatch((line) -> form == Component.EVENT && line.contains("RELATED=END"));
		assertThat(write(List.of(ENTRIES.nothingPlanned(new UUID(1, 2), CHANGED)), form, LocalTime.of(7, 30)))
			.asString(StandardCharsets.UTF_8)
			.doesNotContain("VALARM");
	}

	/** RFC 7986 sections 5.1, 5.2, 5.7 and 5.9, and the older names beside them. */
	@ParameterizedTest
	@EnumSource
	void calendarLevelSaysAllInOldAndNewWays(Component form) {
		assertThat(new String(write(entries(), form, null), StandardCharsets.UTF_8)).startsWith("""
				BEGIN:VCALENDAR
				VERSION:2.0
				PRODID:-//Leafward//Plant care//EN
				CALSCALE:GREGORIAN
				NAME:Roots\\, "shoots"\\; and \\\\leaves
				X-WR-CALNAME:Roots\\, "shoots"\\; and \\\\leaves
				DESCRIPTION:What to do\\; what to leave\\, and when.\\nDates move with the wea
				 ther.
				X-WR-CALDESC:What to do\\; what to leave\\, and when.\\nDates move with the we
				 ather.
				REFRESH-INTERVAL;VALUE=DURATION:PT12H
				X-PUBLISHED-TTL:PT12H
				COLOR:olivedrab
				X-APPLE-CALENDAR-COLOR:#6B8E23
				BEGIN:V""".replace("\n", "\r\n"));
		// It would repeat the secret address.
		assertThat(values(lines(form, null), "SOURCE")).isEmpty();
		assertThat(values(lines(form, null), "X-WR-TIMEZONE")).isEmpty();
	}

	/** Section 3.3.11, and what clients take for the end of a line. */
	@Test
	void textIsEscapedOnceAndClean() {
		FeedEntry plain = ENTRIES.of(aTask().build());
		String odd = "a\\n, b; c: \"d\" /e\u0085f\u2028g\u2029h\u0007i\uFEFFj\uD83Ck e\u0301\r\nl\tm";
		FeedEntry entry = new FeedEntry(plain.uid(), 0, plain.created(), plain.changed(), plain.window(), "s", odd,
				plain.url(), plain.kind(), plain.categories(), plain.standing());
		String written = values(lines(write(List.of(entry), Component.EVENT, null)), "DESCRIPTION").get(1);
		assertThat(written).isEqualTo(":a\\\\n\\, b\\; c: \"d\" /e\\nf\\ng\\nhijk \u00e9\\nl m");
		assertThat(Normalizer.isNormalized(written, Normalizer.Form.NFC)).isTrue();
	}

	/** Section 3.1: every position of a wide character around the fold at 75 octets. */
	@ParameterizedTest
	@ValueSource(strings = { "ü", "…", "\uD83C\uDF31", "\uD83D\uDC68\u200D\uD83C\uDF3E", "\\", ",", "\n" })
	void foldingIsByOctetsAndNeverInsideACharacter(String character) {
		List<FeedEntry> entries = new ArrayList<>();
		for (int i = 0; i < 160; i++) {
			FeedEntry plain = ENTRIES.of(aTask().numbered(i).build());
			entries.add(new FeedEntry(plain.uid(), 0, plain.created(), plain.changed(), plain.window(), "fold",
					"x".repeat(i) + character + "x", plain.url(), plain.kind(), plain.categories(), plain.standing()));
		}
		byte[] feed = write(entries, Component.EVENT, null);
		assertThat(FeedReading.read(feed)).isEqualTo(entries.stream().map(FeedReading.Seen::of).toList());
		Set<Integer> lengths = new HashSet<>();
		for (String line : new String(feed, StandardCharsets.ISO_8859_1).split("\r\n")) {
			lengths.add(line.length());
		}
		assertThat(lengths).contains(75).allMatch((length) -> length <= 75);
		assertThat(feed).endsWith("END:VCALENDAR\r\n".getBytes(StandardCharsets.UTF_8));
	}

}
