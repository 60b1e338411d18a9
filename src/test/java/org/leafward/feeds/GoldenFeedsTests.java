package org.leafward.feeds;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leafward.feeds.content.FeedSites;
import org.leafward.accounts.People;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.garden.GardenTasks;
import org.leafward.care.pack.SpokenPacks;
import org.leafward.feeds.core.FeedLife;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Written;
import org.leafward.feeds.ical.FeedReading;
import org.leafward.feeds.ical.IcsLinter;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.mock;

/**
 * The calendars of the twelve gardens in every option, each read by another library and
 * looked at octet by octet. A few stand whole in {@code golden/feeds}; of all others
 * {@code digests.csv} has size and SHA-256. {@code mvn test -Dtest=GoldenFeedsTests
 * -Dleafward.golden=write} writes them anew; what differs is put into
 * {@code target/golden-feeds}, so that you can compare it with the same of another
 * commit.
 */
class GoldenFeedsTests {

	private static final Path FOLDER = Path.of("src/test/resources/golden/feeds");

	private static final Path DIGESTS = FOLDER.resolve("digests.csv");

	private static final Path DIFFERENT = Path.of("target/golden-feeds");

	/** Kept whole. */
	private static final Set<String> WHOLE = Set.of("houseplants en-both-short.ics", "houseplants en-both-short.todo",
			"kitchen-garden en-us-short-alarm.ics", "kitchen-garden en-us-short-alarm.todo",
			"salted-roadside es-metric-short-again.ics", "salted-roadside es-metric-short-again.todo");

	/**
	 * What isn't of plants has entries of its own, which {@code OtherEntriesTests} looks
	 * at.
	 */
	private static final Set<FeedPart> PARTS = EnumSet.complementOf(EnumSet.of(FeedPart.WORKDAYS, FeedPart.ADVISORIES));

	private static final Map<String, byte[]> DOCUMENTS = new TreeMap<>();

	private static final Map<String, Integer> COUNTS = new TreeMap<>();

	private static final List<String> PROBLEMS = new ArrayList<>();

	private static final TaskCalendar TASKS = mock();

	private static FeedBuilder builder;

	/**
	 * Options under a name.
	 *
	 * @param name without language and units
	 * @param parts what the calendar holds
	 * @param alarm null for none
	 * @param behind days behind
	 * @param ahead days ahead
	 */
	private record Choice(String name, Set<FeedPart> parts, LocalTime alarm, int behind, int ahead) {

		/** Units don't change what parts and alarms do, so these are made once. */
		List<Units> units() {
			return this.name.isEmpty() || this.name.startsWith("-short") ? List.of(Units.values())
					: List.of(Units.BOTH);
		}

		FeedOptions in(Language language, Units units) {
			return new FeedOptions(new Speech(language, units), this.parts, this.alarm, this.behind, this.ahead);
		}

	}

	private static List<Choice> choices() {
		Set<FeedPart> all = EnumSet.allOf(FeedPart.class);
		List<Choice> choices = new ArrayList<>();
		choices.add(new Choice("", all, null, FeedOptions.MOST_BEHIND, FeedOptions.MOST_AHEAD));
		for (FeedPart part : PARTS) {
			choices.add(
					new Choice("-" + part.code(), Set.of(part), null, FeedOptions.MOST_BEHIND, FeedOptions.MOST_AHEAD));
		}
		choices.add(new Choice("-alarm", all, LocalTime.of(7, 30), FeedOptions.MOST_BEHIND, FeedOptions.MOST_AHEAD));
		choices.add(new Choice("-short", all, null, 7, 14));
		choices.add(new Choice("-short-alarm", all, LocalTime.MIDNIGHT, 0, 7));
		return choices;
	}

	@BeforeAll
	static void build() throws IOException {
		Register register = mock();
		for (String garden : GardenTasks.gardens()) {
			SiteId site = GardenTasks.site(garden);
			given(register.find(site)).willReturn(Optional.of(new Site(site, GardenTasks.PERSON, garden, "Somewhere",
					new GeoPoint(45, -90, 200), ZoneOffset.UTC, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE)));
		}
		People people = mock();
		builder = new FeedBuilder(TASKS, register, people, SpokenPacks.books(GardenTasks.packs()), List.of(),
				mock(FeedSites.class), "https://calendar.example.org");
		for (String garden : GardenTasks.gardens()) {
			for (Language language : Language.values()) {
				for (FeedForm form : FeedForm.values()) {
					of(garden, language, form);
				}
			}
		}
		if ("write".equals(System.getProperty("leafward.golden"))) {
			write();
		}
	}

	private static void of(String garden, Language language, FeedForm form) {
		LocalDate day = GardenTasks.today(garden);
		Instant now = day.atTime(12, 0).toInstant(ZoneOffset.UTC);
		for (Choice choice : choices()) {
			for (Units units : choice.units()) {
				FeedOptions options = choice.in(language, units);
				String name = "%s %s-%s%s".formatted(garden, language.code(), units.code(), choice.name());
				plan(GardenTasks.of(garden));
				Written first = build(name, claimed(garden, form, options), day, Before.nothing(now));
				if (choice.name().equals("-short")) {
					plan(GardenTasks.dayAfter(garden));
					build(name + "-again", claimed(garden, form, options), day.plusDays(1),
							new Before(first.octets(), first.aheadBy(), now.plusSeconds(86_400)));
				}
				if (choice.name().isEmpty() && units == Units.US) {
					build(name + "-then-both", claimed(garden, form, choice.in(language, Units.BOTH)), day,
							new Before(first.octets(), first.aheadBy(), now.plusSeconds(60)));
				}
			}
		}
	}

	private static void plan(List<CareTask> tasks) {
		doAnswer((call) -> {
			DayWindow days = call.getArgument(1);
			return tasks.stream().filter((task) -> days.overlaps(task.window())).toList();
		}).when(TASKS).ofSite(any(), any());
	}

	private static Claimed claimed(String garden, FeedForm form, FeedOptions options) {
		UUID site = GardenTasks.site(garden).value();
		Instant made = GardenTasks.today(garden).minusDays(90).atTime(9, 8, 7).toInstant(ZoneOffset.UTC);
		return new Claimed(new FeedId(site), form, FeedKind.SITE, site, GardenTasks.PERSON, options,
				FeedLife.of(made, null), null, 0);
	}

	private static Written build(String name, Claimed feed, LocalDate day, Before before) {
		Written written = builder.build(feed, day, before);
		String file = name + ((feed.form() == FeedForm.EVENTS) ? ".ics" : ".todo");
		DOCUMENTS.put(file, written.octets());
		COUNTS.put(file, FeedReading.count(written.octets()));
		boolean twice = feed.options().speech().units() == Units.BOTH;
		IcsLinter.problems(written.octets(), twice ? builder.build(feed, day, before).octets() : written.octets())
			.forEach((problem) -> PROBLEMS.add(file + ": " + problem));
		return written;
	}

	@Test
	void noneBreaksARule() {
		assertThat(PROBLEMS).isEmpty();
	}

	/** Warnings and validation problems fail while they are read. */
	@Test
	void anotherLibraryReadsEach() {
		assertThat(COUNTS).hasSizeGreaterThan(12 * 2 * 2 * 15).containsOnlyKeys(DOCUMENTS.keySet());
		COUNTS.forEach((name, count) -> assertThat(count).as(name).isPositive());
	}

	@Test
	void octetsAreTheReviewedOnes() throws IOException {
		List<String> reviewed = Files.readAllLines(DIGESTS).stream().skip(1).toList();
		List<String> now = digests();
		Set<String> known = new HashSet<>(reviewed);
		List<String> different = now.stream().filter((line) -> !known.contains(line)).toList();
		for (String line : different) {
			String name = line.substring(0, line.indexOf(','));
			Files.createDirectories(DIFFERENT);
			Files.write(DIFFERENT.resolve(file(name)), DOCUMENTS.get(name));
		}
		assertThat(different).as("documents that differ, see %s", DIFFERENT).isEmpty();
		assertThat(reviewed).isEqualTo(now);
	}

	private static void write() throws IOException {
		Files.createDirectories(FOLDER);
		for (String name : WHOLE) {
			Files.write(FOLDER.resolve(file(name)), DOCUMENTS.get(name));
		}
		Files.writeString(DIGESTS, "# name, SHA-256, entries, octets; written by GoldenFeedsTests\n"
				+ String.join("\n", digests()) + "\n");
	}

	private static List<String> digests() {
		List<String> lines = new ArrayList<>();
		DOCUMENTS.forEach((name, octets) -> lines.add("%s,%s,%d,%d".formatted(name,
				HexFormat.of().formatHex(FeedDocuments.sha256(octets)), COUNTS.get(name), octets.length)));
		return lines;
	}

	private static String file(String name) {
		return name.replace(' ', '_');
	}

	@Test
	void aFewAreKeptWhole() throws IOException {
		for (String name : WHOLE) {
			assertThat(Files.readString(FOLDER.resolve(file(name)))).as(name)
				.isEqualTo(new String(DOCUMENTS.get(name), StandardCharsets.UTF_8));
		}
		try (Stream<Path> files = Files.list(FOLDER)) {
			assertThat(files.map((file) -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(
					Stream.concat(Stream.of("digests.csv"), WHOLE.stream().map(GoldenFeedsTests::file)).toList());
		}
	}

	/** Otherwise the digests would say nothing about the options. */
	@Test
	void optionsMakeADifference() {
		for (String garden : GardenTasks.gardens()) {
			byte[] usual = DOCUMENTS.get(garden + " en-both.ics");
			assertThat(DOCUMENTS.get(garden + " en-us.ics")).as(garden)
				.isNotEqualTo(usual)
				.isNotEqualTo(DOCUMENTS.get(garden + " en-metric.ics"));
			assertThat(new String(DOCUMENTS.get(garden + " en-both-alarm.ics"), StandardCharsets.UTF_8)).as(garden)
				.contains("TRIGGER;RELATED=START:PT7H30M");
			assertThat(DOCUMENTS.get(garden + " en-both-short.ics").length).as(garden).isLessThan(usual.length);
			int parts = PARTS.stream()
				.map((part) -> DOCUMENTS.get(garden + " en-both-" + part.code() + ".ics"))
				.mapToInt((octets) -> new String(octets, StandardCharsets.UTF_8).contains("UID:nothing-planned") ? 0
						: FeedReading.count(octets))
				.sum();
			assertThat(parts).as(garden).isEqualTo(FeedReading.count(usual));
		}
	}

	/** After units changed, what looks the same keeps its revision. */
	@Test
	void onlyWhatLooksOtherwiseHasAnotherRevision() {
		for (String garden : GardenTasks.gardens()) {
			byte[] before = DOCUMENTS.get(garden + " en-us.ics");
			byte[] after = DOCUMENTS.get(garden + " en-us-then-both.ics");
			Map<String, FeedReading.Seen> was = byUid(before);
			Map<String, FeedReading.Seen> is = byUid(after);
			Map<String, FeedReading.Stamp> stampsBefore = FeedReading.stamps(before);
			Map<String, FeedReading.Stamp> stampsAfter = FeedReading.stamps(after);
			is.forEach((uid, seen) -> {
				if (seen.equals(was.get(uid))) {
					assertThat(stampsAfter.get(uid)).as(uid).isEqualTo(stampsBefore.get(uid));
				}
				else {
					assertThat(stampsAfter.get(uid).sequence()).as(uid).isGreaterThan(stampsBefore.get(uid).sequence());
					assertThat(stampsAfter.get(uid).modified()).as(uid).isAfter(stampsBefore.get(uid).modified());
				}
			});
			assertThat(stampsAfter).as(garden).isNotEqualTo(stampsBefore);
		}
	}

	private static Map<String, FeedReading.Seen> byUid(byte[] octets) {
		Map<String, FeedReading.Seen> seen = new TreeMap<>();
		FeedReading.read(octets).forEach((each) -> seen.put(each.uid(), each));
		return seen;
	}

}
