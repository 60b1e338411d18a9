package org.leafward.reminders.words;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Person;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.care.garden.GardenTasks;
import org.leafward.care.pack.SpokenPacks;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Phrasebooks;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.AdvisoriesInMemory;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.core.AdvisoryNotice;
import org.leafward.reminders.core.AdvisoryNotice.News;
import org.leafward.reminders.core.Content;
import org.leafward.reminders.core.Outlook;
import org.leafward.reminders.core.ReminderItem;

/**
 * Messages about tasks of the golden gardens, and the words that come with the server.
 */
public final class SampleMessages {

	public static final Person ADA = new Person(GardenTasks.PERSON, "Ada", "ada@example.org",
			ZoneId.of("America/Chicago"));

	public static final Phrasebooks BOOKS = SpokenPacks.books(GardenTasks.packs());

	public static final MessageWords WORDS = new MessageWords(new KnowledgeFiles(""), new KnowledgeReader(), BOOKS,
			"Green Group, 12 Elm Street, Springfield; help@example.org");

	public static final String KITCHEN = "kitchen-garden";

	private static final List<String> REASONS = List.of("The planting is no longer in the register.",
			"The weather makes it needless for now. Water in the root zone: moist enough; 12 mm are missing, plants feel it from 35 mm on.");

	private SampleMessages() {
	}

	/** By name. */
	public static Map<String, Content> all() {
		Map<String, Content> all = new LinkedHashMap<>();
		all.put("morning", content(Series.MORNING, morning(), null));
		all.put("changes", content(Series.MORNING, changes(), null));
		List<ReminderItem> both = new ArrayList<>(morning().subList(0, 2));
		both.addAll(changes().subList(0, 1));
		all.put("morning-and-a-change", content(Series.MORNING, both, null));
		all.put("hold-off", content(Series.SINGLE, List.of(holdOff()), null));
		all.put("ramp", content(Series.SINGLE, List.of(ramp()), null));
		all.put("watch", content(Series.SINGLE, List.of(watch()), null));
		all.put("moved", content(Series.SINGLE, List.of(moved()), null));
		all.put("fell-away", content(Series.SINGLE, List.of(fellAway()), null));
		all.put("tonight", content(Series.TONIGHT, tonight(), null));
		all.put("tonight-one", content(Series.TONIGHT, tonight().subList(0, 1), null));
		List<ReminderItem> now = morning().subList(0, 2);
		all.put("outlook", content(Series.OUTLOOK, now, outlook(GardenTasks.gardens(),
				now.stream().map((item) -> item.task().id()).collect(Collectors.toSet()))));
		all.put("outlook-of-one", content(Series.OUTLOOK, List.of(), outlook(List.of("houseplants"), Set.of())));
		all.put("outlook-of-nothing", content(Series.OUTLOOK, List.of(),
				new Outlook(LocalDate.parse("2026-12-28"), List.of(), List.of(), List.of(), List.of(), List.of())));
		all.put("morning-and-an-advisory", new Content(ADA, Wishes.MAIL, Series.MORNING, now, null, List.of(wind())));
		all.put("advisory", advisories(wind()));
		all.put("advisory-changed", advisories(changedWind()));
		all.put("advisory-off", advisories(calledOff()));
		all.put("advisory-in-english-only", advisories(
				new AdvisoryNotice(wind().reminder(), AdvisoriesInMemory.inEnglishOnly(wind().advisory()), News.NEW)));
		all.put("advisories", advisories(calledOff(), changedWind()));
		return all;
	}

	private static Content advisories(AdvisoryNotice... notices) {
		return new Content(ADA, Wishes.MAIL, Series.ADVISORY, List.of(), null, List.of(notices));
	}

	private static AdvisoryNotice wind() {
		Instant sent = Instant.parse("2026-07-15T15:00:00Z");
		return new AdvisoryNotice(TaskFixture.id("reminder of wind"),
				AdvisoriesInMemory.moderate(new UUID(7, 7), sent, sent.plusSeconds(86_400), sent.plusSeconds(300_000)),
				News.NEW);
	}

	private static AdvisoryNotice changedWind() {
		Advisory changed = AdvisoriesInMemory.next(wind().advisory(), AdvisoryState.IN_FORCE,
				Instant.parse("2026-07-16T15:00:00Z"), "It lasts a day longer.");
		return new AdvisoryNotice(TaskFixture.id("reminder of changed wind"), changed, News.CHANGED);
	}

	private static AdvisoryNotice calledOff() {
		Advisory off = AdvisoriesInMemory.next(
				AdvisoriesInMemory.moderate(new UUID(8, 8), Instant.parse("2026-07-15T15:00:00Z"),
						Instant.parse("2026-07-16T15:00:00Z"), Instant.parse("2026-07-18T15:00:00Z")),
				AdvisoryState.CANCELLED, Instant.parse("2026-07-15T18:00:00Z"), "The wind turned north.");
		return new AdvisoryNotice(TaskFixture.id("reminder of no wind"), off, News.OFF);
	}

	public static Content content(Series series, List<ReminderItem> items, @Nullable Outlook outlook) {
		return new Content(ADA, Wishes.MAIL, series, items, outlook);
	}

	public static ReminderItem item(Topic topic, CareTask task) {
		return new ReminderItem(TaskFixture.id("reminder of " + task.id()), topic, task,
				(task.kind() == TaskKind.RAMP_DAY) ? 14 : 0, null);
	}

	public static Topic topic(CareTask task) {
		return switch (task.kind()) {
			case DO -> Topic.TO_DO;
			case HOLD_OFF -> Topic.HOLD_OFF;
			case RAMP_DAY -> Topic.RAMP;
			case WATCH -> Topic.LOOK_FOR;
		};
	}

	private static List<ReminderItem> morning() {
		LocalDate today = GardenTasks.today(KITCHEN);
		return planned(KITCHEN).filter((task) -> !task.window().from().isBefore(today))
			.sorted(Comparator.comparing((CareTask task) -> task.window().from()).thenComparing(CareTask::rule))
			.limit(12)
			.map((task) -> item(topic(task), task))
			.toList();
	}

	/** Two that moved and two that fell away. */
	private static List<ReminderItem> changes() {
		List<ReminderItem> changes = new ArrayList<>();
		planned("newly-planted").filter((task) -> task.kind() == TaskKind.DO)
			.limit(2)
			.forEach((task) -> changes.add(changed(task, task.window().from().minusDays(9))));
		withdrawn().limit(2).forEach((task) -> changes.add(changed(task, task.window().from())));
		return changes;
	}

	private static ReminderItem moved() {
		CareTask task = planned("salted-roadside").findFirst().orElseThrow();
		return changed(task, task.window().from().minusDays(5));
	}

	private static ReminderItem fellAway() {
		CareTask task = withdrawn().findFirst().orElseThrow();
		return changed(task, task.window().from());
	}

	private static ReminderItem changed(CareTask task, LocalDate told) {
		return new ReminderItem(TaskFixture.id("reminder of " + task.id()), Topic.CHANGE, task, 0, told);
	}

	private static ReminderItem holdOff() {
		return one((task) -> task.kind() == TaskKind.HOLD_OFF && task.text().caution() != null);
	}

	private static ReminderItem ramp() {
		return one((task) -> task.kind() == TaskKind.RAMP_DAY && task.occurrence() == 1);
	}

	private static ReminderItem watch() {
		return one((task) -> task.kind() == TaskKind.WATCH);
	}

	private static ReminderItem one(Predicate<CareTask> which) {
		CareTask task = everything().filter(which).findFirst().orElseThrow();
		return item(topic(task), task);
	}

	/** No golden garden has a cold night, so their plants get the words of its rules. */
	private static List<ReminderItem> tonight() {
		DayWindow night = DayWindow.of(LocalDate.parse("2026-10-08"));
		List<CareTask> plants = Stream.of(KITCHEN, "newly-planted")
			.flatMap((garden) -> planned(garden).filter((task) -> task.planting() != null && task.kind() == TaskKind.DO)
				.collect(Collectors.toMap(CareTask::subject, Function.identity(), (one, other) -> one, TreeMap::new))
				.values()
				.stream()
				.limit(3))
			.toList();
		List<String> rules = List.of("frost-nights/cover-basil", "frost-nights/cover-very-tender",
				"frost-nights/cover-very-tender");
		List<ReminderItem> items = new ArrayList<>();
		for (int at = 0; at < plants.size(); at++) {
			String rule = rules.get(at % rules.size());
			TaskText words = GardenTasks.packs().find(rule).orElseThrow().text();
			items.add(item(Topic.TONIGHT, with(plants.get(at), rule, night, words)));
		}
		return items;
	}

	/** Days differ from garden to garden, so tasks are moved to the first one's. */
	private static Outlook outlook(List<String> gardens, Set<TaskId> told) {
		LocalDate today = GardenTasks.today(gardens.get(0));
		List<CareTask> tasks = gardens.stream().flatMap((garden) -> {
			long days = today.toEpochDay() - GardenTasks.today(garden).toEpochDay();
			return GardenTasks.of(garden)
				.stream()
				.map((task) -> on(task,
						new DayWindow(task.window().from().plusDays(days), task.window().to().plusDays(days))));
		})
			.sorted(Comparator.comparing((CareTask task) -> task.window().from())
				.thenComparing((task) -> task.id().value()))
			.toList();
		DayWindow days = Outlook.days(today);
		return Outlook.of(tasks.stream().filter((task) -> task.window().overlaps(days)).toList(), told, today,
				today.atTime(12, 0).toInstant(ZoneOffset.UTC));
	}

	private static Stream<CareTask> withdrawn() {
		return everything().filter((task) -> task.state() == TaskState.WITHDRAWN)
			.map((task) -> on(task, task.window()));
	}

	private static Stream<CareTask> planned(String garden) {
		return GardenTasks.of(garden).stream().filter((task) -> task.state() == TaskState.PLANNED);
	}

	private static Stream<CareTask> everything() {
		return GardenTasks.gardens().stream().flatMap((garden) -> GardenTasks.of(garden).stream());
	}

	private static CareTask on(CareTask task, DayWindow window) {
		return with(task, task.rule(), window, task.text());
	}

	private static CareTask with(CareTask task, String rule, DayWindow window, TaskText text) {
		return new CareTask(task.id(), task.planting(), task.plant(), task.site(), task.siteName(), task.person(), rule,
				task.season(), task.occurrence(), task.kind(), window, text, task.state(), because(task),
				task.sequence(), task.createdAt(), task.changedAt());
	}

	/** The gardens have reasons of their own; these are as the server gives them. */
	private static @Nullable String because(CareTask task) {
		if (task.state() != TaskState.WITHDRAWN) {
			return null;
		}
		return REASONS.get(Math.floorMod(task.rule().hashCode(), REASONS.size()));
	}

}
