package org.leafward.feeds;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.feeds.content.FeedSites;
import org.leafward.workdays.Groups;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.feeds.ical.FeedReading;
import org.leafward.feeds.ical.FeedReading.Stamp;
import org.leafward.feeds.ical.IcsLinter;
import org.leafward.feeds.poll.PollBoard;
import org.leafward.feeds.poll.PollFixture;
import org.leafward.feeds.store.DocumentTable;
import org.leafward.feeds.store.FeedTable;
import org.leafward.feeds.store.TablesFixture;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Language;
import org.leafward.language.PhraseSource;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.DayWindow;
import org.leafward.register.Beds;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.util.unit.DataSize;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.feeds.core.CareTaskFixture.aTask;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.mock;

/**
 * Revisions over the life of documents, in a real database: two nodes, each with a
 * connection of its own, build by turns. Whatever brings a change about, what looks
 * otherwise has a higher SEQUENCE and a later LAST-MODIFIED (RFC 5545 sections 3.8.7.3
 * and 3.8.7.4) and everything else keeps both. Some clients take nothing that isn't
 * later.
 */
class RevisionHistoriesTests {

	private static final Instant START = Instant.parse("2026-03-10T12:00:00Z");

	private static final int HISTORIES = 50;

	private static final Duration BOX = Duration.ofMinutes(1);

	private final SettableClock clock = new SettableClock(START);

	private final SiteId site = new SiteId(UUID.randomUUID());

	private final PersonId owner = new PersonId(UUID.randomUUID());

	private final Map<Integer, CareTask> plan = new TreeMap<>();

	private final Register register = mock();

	/** What the rules are called in Spanish. */
	private final Map<String, String> spanish = new HashMap<>(
			Map.of("Water deeply", "Riegue a fondo", "Why this date", "Por qué esta fecha"));

	private List<HikariDataSource> sources;

	private Node one;

	private Node other;

	/** What a server has for itself; the tables are shared. */
	private record Node(Feeds feeds, FeedDocuments documents, DocumentTable store, TransactionTemplate transaction) {
	}

	@BeforeEach
	void twoNodes() {
		HikariDataSource first = TestDatabase.fresh();
		HikariDataSource second = new HikariDataSource();
		second.setJdbcUrl(first.getJdbcUrl());
		second.setUsername(first.getUsername());
		second.setMaximumPoolSize(2);
		second.setMinimumIdle(0);
		this.sources = List.of(first, second);
		this.one = node(first, this.clock);
		this.other = node(second, this.clock);
	}

	@AfterEach
	void close() {
		this.sources.forEach(HikariDataSource::close);
	}

	private Node node(HikariDataSource source, Clock time) {
		TaskCalendar tasks = mock();
		doAnswer((call) -> {
			DayWindow days = call.getArgument(1);
			return this.plan.values().stream().filter((task) -> days.overlaps(task.window())).toList();
		}).when(tasks).ofSite(any(), any());
		JdbcClient database = JdbcClient.create(source);
		FeedTable table = TablesFixture.feeds(database);
		DocumentTable store = TablesFixture.documents(database);
		TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(source));
		People people = mock();
		FeedBuilder builder = new FeedBuilder(tasks, this.register, people,
				new Phrasebooks(new KnowledgeFiles(""), new KnowledgeReader(), List.of(new PhraseSource() {
					@Override
					public Map<String, String> texts(Language language) {
						return Map.copyOf(RevisionHistoriesTests.this.spanish);
					}

					@Override
					public Object version() {
						return Map.copyOf(RevisionHistoriesTests.this.spanish);
					}
				})), List.of(), mock(FeedSites.class), "https://calendar.example.org");
		PollBoard board = PollFixture.deaf(source);
		FeedDocuments documents = new FeedDocuments(table, store, builder, board,
				PollFixture.fetches(source, board, time), transaction, time, DataSize.ofMegabytes(1));
		return new Node(
				new Feeds(table, documents, board, this.register, people, mock(Groups.class), mock(Beds.class), time),
				documents, store, transaction);
	}

	@ParameterizedTest
	@EnumSource
	void aChangeOfRulesIsARevisionOfTheTask(FeedForm form) {
		NewFeed feed = three();
		raises(feed, form, Set.of(1), () -> change(1,
				(task) -> with(task, task.window(), task.text().title() + " now", task.state(), task.sequence() + 1)));
	}

	@ParameterizedTest
	@EnumSource
	void aWindowMovedByTheWeatherIsARevisionOfTheTask(FeedForm form) {
		NewFeed feed = three();
		raises(feed, form, Set.of(2),
				() -> change(2,
						(task) -> with(task,
								new DayWindow(task.window().from().plusDays(2), task.window().to().plusDays(2)), null,
								task.state(), task.sequence() + 1)));
	}

	@ParameterizedTest
	@EnumSource
	void doneAndUndoneAreRevisionsOfTheTask(FeedForm form) {
		NewFeed feed = three();
		raises(feed, form, Set.of(3), () -> change(3, (task) -> state(task, TaskState.DONE)));
		raises(feed, form, Set.of(3), () -> change(3, (task) -> state(task, TaskState.PLANNED)));
		raises(feed, form, Set.of(3), () -> change(3, (task) -> state(task, TaskState.SKIPPED)));
		raises(feed, form, Set.of(3), () -> change(3, (task) -> state(task, TaskState.WITHDRAWN)));
	}

	@ParameterizedTest
	@EnumSource
	void anotherLanguageIsARevisionOfWhatReadsOtherwise(FeedForm form) {
		NewFeed feed = three();
		change(2, (task) -> with(task, task.window(), "Riego", task.state(), task.sequence()));
		build(feed, form);
		raises(feed, form, Set.of(1, 2, 3), () -> options(feed, (was) -> inSpanish()));
		// A template's word changes in the next version of the server.
		raises(feed, form, Set.of(1, 3), () -> this.spanish.put("Water deeply", "Riegue bien"));
	}

	@ParameterizedTest
	@EnumSource
	void otherUnitsAreARevisionOfWhatHasUnits(FeedForm form) {
		NewFeed feed = three();
		change(1, (task) -> with(task, task.window(), "Water 25 mm (1 in)", task.state(), task.sequence()));
		change(2, (task) -> with(task, task.window(), "Prune", task.state(), task.sequence()));
		build(feed, form);
		raises(feed, form, Set.of(1),
				() -> options(feed, (was) -> FeedOptions.of(new Speech(Language.ENGLISH, Units.METRIC))));
	}

	@ParameterizedTest
	@EnumSource
	void anAlarmIsARevisionOfWhatRings(FeedForm form) {
		NewFeed feed = three();
		change(2, (task) -> state(task, TaskState.DONE));
		build(feed, form);
		raises(feed, form, Set.of(1, 3), () -> options(feed,
				(was) -> new FeedOptions(was.speech(), was.parts(), LocalTime.of(7, 0), was.behind(), was.ahead())));
	}

	@Test
	void aShorterCalendarIsNoRevisionOfWhatStays() {
		NewFeed feed = three();
		raises(feed, FeedForm.EVENTS, Set.of(), () -> options(feed,
				(was) -> new FeedOptions(was.speech(), EnumSet.of(FeedPart.TASKS), was.alarm(), 0, 60)));
	}

	/**
	 * Otherwise a client that missed the document without it would keep its old words: it
	 * takes nothing that isn't later than what it has.
	 */
	@Test
	void whatComesBackIsLaterThanAllBefore() {
		NewFeed feed = three();
		options(feed, (was) -> inSpanish());
		Stamp last = stamps(build(feed, FeedForm.EVENTS)).get(uid(1));
		this.clock.advance(Duration.ofDays(1));
		CareTask gone = this.plan.remove(1);
		build(feed, FeedForm.EVENTS);
		this.clock.advance(Duration.ofDays(1));
		this.plan.put(1, gone);
		options(feed, (was) -> FeedOptions.USUAL);
		Stamp back = stamps(build(feed, FeedForm.EVENTS)).get(uid(1));
		assertThat(back.modified()).isAfter(last.modified());
		assertThat(back.sequence()).isGreaterThanOrEqualTo(last.sequence());
	}

	/**
	 * Two hundred histories of a year or so. Nothing falls, whatever vanishes and comes
	 * back, and what looks otherwise than the last time that it was shown is later.
	 */
	@Test
	void nothingEverFalls() {
		int changes = 0;
		int returns = 0;
		for (int seed = 0; seed < HISTORIES; seed++) {
			Random random = new Random(seed);
			this.plan.clear();
			this.known.clear();
			this.clock.set(START.plus(Duration.ofDays(500L * seed)));
			for (int i = 0; i < 4; i++) {
				this.plan.put(i, fresh(i));
			}
			NewFeed feed = this.one.feeds().createForSite(this.site, this.owner, FeedOptions.USUAL);
			FeedForm form = FeedForm.values()[seed % 2];
			Map<String, Stamp> last = new HashMap<>();
			Map<String, String> looked = new HashMap<>();
			Set<String> before = new HashSet<>();
			for (int step = 0; step < 15; step++) {
				happen(random, feed);
				byte[] octets = build(random.nextBoolean() ? this.one : this.other, feed, form);
				Map<String, String> looks = looks(octets);
				for (Map.Entry<String, Stamp> shown : stamps(octets).entrySet()) {
					String uid = shown.getKey();
					Stamp is = shown.getValue();
					Stamp was = last.put(uid, is);
					String look = looked.put(uid, looks.get(uid));
					if (was == null) {
						continue;
					}
					String what = "history %d, step %d, %s".formatted(seed, step, uid);
					boolean same = looks.get(uid).equals(look);
					assertThat(is.sequence()).as(what).isGreaterThanOrEqualTo(was.sequence());
					if (!before.contains(uid)) {
						returns++;
						assertThat(is.modified()).as(what).isAfter(was.modified());
					}
					else if (same) {
						assertThat(is).as(what).isEqualTo(was);
					}
					else {
						changes++;
						assertThat(is.sequence()).as(what).isGreaterThan(was.sequence());
						assertThat(is.modified()).as(what).isAfter(was.modified());
					}
				}
				before = looks.keySet();
			}
			this.one.feeds().revoke(feed.id(), this.owner);
		}
		assertThat(changes).isGreaterThan(500);
		assertThat(returns).isGreaterThan(100);
	}

	/** From the same state of the database, whichever node builds. */
	@Test
	void twoNodesMakeTheSameOctets() {
		Random random = new Random(7);
		NewFeed feed = three();
		read(this.one, feed, FeedForm.TODOS);
		for (int step = 0; step < 60; step++) {
			happen(random, feed);
			List<byte[]> first = built(this.one, feed);
			List<byte[]> second = built(this.other, feed);
			assertThat(first).hasSize(2);
			assertThat(second).usingRecursiveComparison().isEqualTo(first);
			byte[] stored = build((step % 2 == 0) ? this.one : this.other, feed, FeedForm.EVENTS);
			assertThat(stored).isEqualTo(first.get(0));
			assertThat(IcsLinter.problems(stored)).isEmpty();
		}
	}

	/** What a node would store now. */
	private List<byte[]> built(Node node, NewFeed feed) {
		List<byte[]> octets = new ArrayList<>();
		node.transaction()
			.executeWithoutResult((status) -> node.store()
				.of(feed.id())
				.forEach((claimed) -> octets.add(node.documents().written(claimed).octets())));
		return octets;
	}

	private void happen(Random random, NewFeed feed) {
		// Some things happen within a second.
		this.clock
			.advance((random.nextInt(3) == 0) ? Duration.ofMillis(300) : Duration.ofHours(1 + random.nextInt(60)));
		for (int i = random.nextInt(3); i >= 0; i--) {
			int number = random.nextInt(6);
			CareTask task = this.plan.get(number);
			if (task == null) {
				this.plan.put(number, fresh(number));
				continue;
			}
			switch (random.nextInt(6)) {
				case 0 -> change(number, (was) -> state(was, TaskState.DONE));
				case 1 -> change(number, (was) -> state(was, TaskState.PLANNED));
				case 2 -> change(number, (was) -> state(was, TaskState.WITHDRAWN));
				case 3 -> this.plan.remove(number);
				case 4 -> change(number,
						(was) -> with(was,
								new DayWindow(was.window().from().plusDays(1), was.window().to().plusDays(3)), null,
								was.state(), was.sequence() + 1));
				default -> this.spanish.put("Water deeply", "Riegue " + random.nextInt(5));
			}
		}
		// The last thing, since it builds at once.
		if (random.nextInt(4) == 0) {
			options(feed, (was) -> random(random));
		}
	}

	private static FeedOptions random(Random random) {
		Speech speech = new Speech(Language.values()[random.nextInt(2)], Units.values()[random.nextInt(3)]);
		Set<FeedPart> parts = random.nextBoolean() ? EnumSet.allOf(FeedPart.class)
				: EnumSet.of(FeedPart.values()[random.nextInt(4)]);
		return new FeedOptions(speech, parts, random.nextBoolean() ? LocalTime.of(random.nextInt(24), 0) : null,
				random.nextInt(100), 7 + random.nextInt(300));
	}

	private NewFeed three() {
		for (int i = 1; i <= 3; i++) {
			this.plan.put(i, fresh(i));
		}
		return this.one.feeds().createForSite(this.site, this.owner, FeedOptions.USUAL);
	}

	/** A task; one that comes back is the same as before, as its name is made from it. */
	private CareTask fresh(int number) {
		Instant day = this.clock.instant().plus(Duration.ofDays(number));
		CareTask task = aTask().numbered(number)
			.of((number % 4 == 0) ? TaskKind.WATCH : TaskKind.DO)
			.on(day.toString().substring(0, 10), day.plus(Duration.ofDays(4)).toString().substring(0, 10))
			.build();
		CareTask known = this.known.get(task.id().value());
		return (known != null) ? known : task;
	}

	private final Map<UUID, CareTask> known = new HashMap<>();

	private void change(int number, UnaryOperator<CareTask> how) {
		this.plan.computeIfPresent(number, (key, task) -> how.apply(task));
		this.known.put(this.plan.get(number).id().value(), this.plan.get(number));
	}

	private CareTask state(CareTask task, TaskState state) {
		return (task.state() == state) ? task : with(task, task.window(), null, state, task.sequence() + 1);
	}

	private CareTask with(CareTask task, DayWindow window, String title, TaskState state, int sequence) {
		TaskText text = (title == null) ? task.text() : new TaskText(title, "How.", null, "Why.", null, null);
		return new CareTask(task.id(), task.planting(), task.plant(), task.site(), task.siteName(), task.person(),
				task.rule(), task.season(), task.occurrence(), task.kind(), window, text, state, null, sequence,
				task.createdAt(), this.clock.instant());
	}

	private static FeedOptions inSpanish() {
		return FeedOptions.of(new Speech(Language.SPANISH, Units.BOTH));
	}

	private void options(NewFeed feed, UnaryOperator<FeedOptions> how) {
		this.one.transaction()
			.executeWithoutResult((status) -> this.one.feeds()
				.change(feed.id(), this.owner,
						how.apply(this.one.feeds().find(feed.id()).map(FeedInfo::options).orElseThrow())));
	}

	/** What changes raises the revision of some tasks and of nothing else. */
	private void raises(NewFeed feed, FeedForm form, Set<Integer> numbers, Runnable what) {
		Map<String, Stamp> before = stamps(build(feed, form));
		this.clock.advance(Duration.ofHours(1));
		what.run();
		Map<String, Stamp> after = stamps(build(feed, form));
		assertThat(after).containsOnlyKeys(before.keySet());
		for (int i = 1; i <= 3; i++) {
			Stamp was = before.get(uid(i));
			Stamp is = after.get(uid(i));
			if (numbers.contains(i)) {
				assertThat(is.sequence()).as("task %d", i).isGreaterThan(was.sequence());
				assertThat(is.modified()).as("task %d", i).isEqualTo(this.clock.instant());
			}
			else {
				assertThat(is).as("task %d", i).isEqualTo(was);
			}
		}
	}

	private byte[] build(NewFeed feed, FeedForm form) {
		return build(this.other, feed, form);
	}

	private byte[] build(Node node, NewFeed feed, FeedForm form) {
		read(node, feed, form);
		node.documents().planChanged(this.site.value(), this.owner.value());
		node.documents().rebuildStale(BOX);
		return read(node, feed, form);
	}

	private static byte[] read(Node node, NewFeed feed, FeedForm form) {
		return node.documents().find(feed.token(), form).flatMap(node.documents()::read).orElseThrow().octets();
	}

	private static Map<String, Stamp> stamps(byte[] octets) {
		return FeedReading.stamps(octets);
	}

	/** All that a reader sees of each entry, alarms too. */
	private static Map<String, String> looks(byte[] octets) {
		Map<String, String> looks = new HashMap<>();
		for (String block : new String(octets, StandardCharsets.UTF_8).split("(?=BEGIN:V(EVENT|TODO))")) {
			if (block.startsWith("BEGIN:VE") || block.startsWith("BEGIN:VT")) {
				String unfolded = block.replace("END:VCALENDAR\r\n", "").replace("\r\n ", "");
				String uid = unfolded.replaceFirst("(?s).*?\r\nUID:(.*?)\r\n.*", "$1");
				looks.put(uid, unfolded.replaceAll("\r\n(DTSTAMP|LAST-MODIFIED|SEQUENCE):[^\r]*", ""));
			}
		}
		return looks;
	}

	private static String uid(int number) {
		return aTask().numbered(number).build().id() + "@leafward";
	}

}
