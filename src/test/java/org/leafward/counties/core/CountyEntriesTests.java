package org.leafward.counties.core;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.counties.core.SharedTasks.Shared;
import org.leafward.feeds.core.FeedEntry;
import org.leafward.feeds.core.FeedWindow;
import org.leafward.feeds.core.TaskEntries;
import org.leafward.feeds.ical.CalendarWriter;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.ical.CalendarWriter.Component;
import org.leafward.feeds.ical.CalendarWriter.Head;
import org.leafward.feeds.ical.CalendarWriter.Written;
import org.leafward.feeds.ical.IcsLinter;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Units;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

import static org.assertj.core.api.Assertions.assertThat;

/** What plants share is one entry, which stays itself as long as it can. */
class CountyEntriesTests {

	private static final LocalDate DAY = LocalDate.of(2026, 3, 10);

	private static final FeedWindow WINDOW = new FeedWindow(DAY, 60, 365);

	private static final Instant NOW = Instant.parse("2026-03-10T12:00:00Z");

	private final CountyEntries entries = new CountyEntries(
			new TaskEntries(Phrasebooks.english(), Units.BOTH, "https://leafward.example"), "Alder County",
			"https://leafward.example/county-calendars?county=alder", Map.of("Roses", Set.of("p1", "p2", "p3", "p4")));

	private static Grown grown(int plant, String rule, int from, TaskState state) {
		return grown(plant, plant, rule, from, state);
	}

	private static Grown grown(int planting, int plant, String rule, int from, TaskState state) {
		UUID subject = new UUID(1, planting);
		CareTask task = new CareTask(new TaskId(UUID.nameUUIDFromBytes((planting + rule).getBytes())),
				new PlantingId(subject), "plant", new SiteId(new UUID(0, 1)), "site", new PersonId(new UUID(0, 2)),
				rule, 2026, 0, TaskKind.DO, new DayWindow(DAY.plusDays(from), DAY.plusDays(from + 5)),
				new TaskText("Water deeply", "Slowly.", "25 mm (1 in)", "Roots dry out.", null, null), state,
				(state == TaskState.WITHDRAWN) ? "It rained." : null, planting, Instant.parse("2026-01-01T00:00:00Z"),
				NOW.minusSeconds(60L * planting));
		return new Grown(task, "p" + plant, "plant " + plant);
	}

	private static Grown planned(int plant, int from) {
		return grown(plant, "basics/water", from, TaskState.PLANNED);
	}

	private List<FeedEntry> of(Set<String> shown, Grown... tasks) {
		return this.entries.of("alder", List.of(tasks), WINDOW, shown);
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 5, 8, 13, 21, 34, 55, 89 })
	void nothingIsLostAndNothingComesTwice(long seed) {
		Random random = new Random(seed);
		List<Grown> tasks = new ArrayList<>();
		Set<UUID> seen = new HashSet<>();
		while (tasks.size() < 300) {
			// Two plantings of some species, as one season's overlap the next one's.
			int planting = random.nextInt(60);
			Grown one = grown(planting, planting % 45, "basics/rule-" + random.nextInt(12), random.nextInt(3),
					TaskState.values()[random.nextInt(4)]);
			if (seen.add(one.task().id().value())) {
				tasks.add(one);
			}
		}
		List<Shared> shared = SharedTasks.of("alder", tasks, (id) -> false);
		assertThat(shared.stream().flatMap((one) -> one.members().stream())).containsExactlyInAnyOrderElementsOf(tasks);
		assertThat(shared).extracting(Shared::id).doesNotHaveDuplicates();
		assertThat(shared).allSatisfy((one) -> assertThat(one.members()
			.stream()
			.map((each) -> List.of(each.task().rule(), each.task().window(), each.task().state()))
			.distinct()).hasSize(1));
		assertThat(
				shared.stream()
					.map((one) -> List.of(one.members().get(0).task().rule(), one.members().get(0).task().window(),
							one.members().get(0).task().state())))
			.as("what looks the same is one")
			.doesNotHaveDuplicates();
		Collections.shuffle(tasks, random);
		assertThat(SharedTasks.of("alder", tasks, (id) -> false)).isEqualTo(shared);
		Set<UUID> shown = shared.stream().map(Shared::id).collect(Collectors.toSet());
		assertThat(SharedTasks.of("alder", tasks, shown::contains)).as("shown again").isEqualTo(shared);
	}

	@Test
	void anEntryStaysItselfWhenPlantsJoinOrLeaveIt() {
		String first = of(Set.of(), planned(2, 9), planned(3, 9)).get(0).uid();
		assertThat(of(Set.of(first), planned(1, 9), planned(2, 9), planned(3, 9)))
			.as("one joins that goes before it by its code")
			.singleElement()
			.satisfies((one) -> assertThat(one.uid()).isEqualTo(first));
		assertThat(of(Set.of(first), planned(2, 9))).singleElement()
			.satisfies((one) -> assertThat(one.uid()).isEqualTo(first));
		assertThat(of(Set.of(first), planned(2, 20), planned(3, 9))).as("it goes with the plant it is named by")
			.extracting(FeedEntry::uid)
			.doesNotHaveDuplicates()
			.element(1)
			.isEqualTo(first);
		assertThat(of(Set.of(), planned(2, 40), planned(3, 40)).get(0).uid()).as("other days").isEqualTo(first);
	}

	@Test
	void twoPlantingsOfASpeciesAreNamedOnceAndKeepTwoEntriesApart() {
		assertThat(of(Set.of(), grown(1, 7, "basics/water", 9, TaskState.PLANNED),
				grown(2, 7, "basics/water", 9, TaskState.PLANNED)))
			.singleElement()
			.satisfies((one) -> assertThat(one.summary()).isEqualTo("Water deeply: plant 7"));
		assertThat(of(Set.of(), grown(1, 7, "basics/water", 9, TaskState.PLANNED),
				grown(2, 7, "basics/water", 12, TaskState.PLANNED)))
			.extracting(FeedEntry::uid)
			.hasSize(2)
			.doesNotHaveDuplicates();
	}

	@Test
	void namesUpToThreePlantsOrTheWholeKind() {
		assertThat(of(Set.of(), planned(1, 9), planned(2, 9), planned(3, 9)).get(0).summary())
			.isEqualTo("Water deeply: plant 1, plant 2, plant 3");
		assertThat(of(Set.of(), planned(1, 9), planned(2, 9), planned(3, 9), planned(4, 9)).get(0).summary())
			.isEqualTo("Water deeply: Roses");
		FeedEntry many = of(Set.of(), planned(1, 9), planned(2, 9), planned(3, 9), planned(4, 9), planned(5, 9)).get(0);
		assertThat(many.summary()).isEqualTo("Water deeply: plant 1, plant 2, plant 3 and 2 more");
		assertThat(many.description())
			.contains("Plants: plant 1, plant 2, plant 3, plant 4, plant 5", "Site: Alder County, average ground")
			.endsWith("https://leafward.example/county-calendars?county=alder")
			.doesNotContain("/tasks/");
	}

	@Test
	void revisionsOnlyRiseAndOnlyWhereSomethingChanged() {
		Grown[] before = { planned(1, 9), planned(2, 9), grown(5, "basics/prune", 30, TaskState.PLANNED) };
		Written first = write(Before.nothing(NOW), before);
		Before then = new Before(first.octets(), first.aheadBy(), NOW.plusSeconds(3600));
		assertThat(write(then, before).octets()).as("nothing changed").isEqualTo(first.octets());
		Written joined = write(then, planned(1, 9), planned(2, 9), planned(3, 9), before[2]);
		assertThat(IcsLinter.problems(joined.octets())).isEmpty();
		assertThat(uids(joined)).isEqualTo(uids(first));
		assertThat(sequences(first)).containsOnly(0);
		assertThat(sequences(joined)).as("the entry that a species joined, and no other").containsExactly(1, 0);
	}

	@Test
	void whatTheWeatherTookFromOnePlantIsAnEntryOfItsOwn() {
		List<FeedEntry> entries = of(Set.of(), planned(1, 9), grown(2, "basics/water", 9, TaskState.WITHDRAWN));
		assertThat(entries).hasSize(2);
		assertThat(entries.stream().filter(FeedEntry::cancelled)).singleElement()
			.satisfies((one) -> assertThat(one.summary()).isEqualTo("No longer needed: Water deeply – plant 2"));
	}

	private Written write(Before before, Grown... tasks) {
		return new CalendarWriter().write(new Head("A", "B", "en"), of(before.shown(), tasks), Component.EVENT, null,
				before);
	}

	private static Set<String> uids(Written written) {
		return new TreeSet<>(new Before(written.octets(), 0, NOW).shown());
	}

	private static List<Integer> sequences(Written written) {
		return new String(written.octets(), java.nio.charset.StandardCharsets.UTF_8).lines()
			.filter((line) -> line.startsWith("SEQUENCE:"))
			.map((line) -> Integer.valueOf(line.substring(9)))
			.toList();
	}

}
