package org.leafward.feeds;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.Set;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.GroupSite;
import org.leafward.workdays.Member;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.workdays.Groups;
import org.leafward.workdays.PlanTerms;
import org.leafward.feeds.content.FeedSites;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.feeds.ical.FeedReading;
import org.leafward.feeds.poll.Fetches;
import org.leafward.feeds.poll.PollBoard;
import org.leafward.feeds.poll.PollFixture;
import org.leafward.feeds.store.DocumentTable;
import org.springframework.util.unit.DataSize;
import org.leafward.feeds.store.FeedTable;
import org.leafward.feeds.store.TablesFixture;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Phrasebooks;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.Beds;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.leafward.feeds.core.CareTaskFixture.aTask;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.BDDMockito.willAnswer;
import static org.mockito.Mockito.clearInvocations;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;

/** The life of documents in a real database. */
class FeedDocumentsTests {

	private static final Instant START = Instant.parse("2026-03-10T12:00:00.7Z");

	private static final Duration BOX = Duration.ofSeconds(1);

	private static HikariDataSource source;

	private final JdbcClient database = JdbcClient.create(source);

	private final TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(source));

	private final FeedTable table = TablesFixture.feeds(this.database);

	private final DocumentTable store = TablesFixture.documents(this.database);

	private final SettableClock clock = new SettableClock(START);

	private final TaskCalendar tasks = mock();

	private final Register register = mock();

	private final People people = mock();

	private final Groups groups = mock();

	private final Beds beds = mock();

	private final Phrasebooks books = new Phrasebooks(new KnowledgeFiles(""), new KnowledgeReader(), List.of());

	private final PollBoard board = PollFixture.deaf(source);

	private final Fetches fetches = PollFixture.fetches(source, this.board, this.clock);

	private final FeedDocuments documents = new FeedDocuments(this.table, this.store,
			new FeedBuilder(this.tasks, this.register, this.people, this.books, List.of(),
					new FeedSites(this.groups, this.beds), "https://leafward.example"),
			this.board, this.fetches, this.transaction, this.clock, DataSize.ofMegabytes(1));

	private final Feeds feeds = new Feeds(this.table, this.documents, this.board, this.register, this.people,
			this.groups, this.beds, this.clock);

	private final SiteId site = new SiteId(UUID.randomUUID());

	private final PersonId person = new PersonId(UUID.randomUUID());

	@BeforeAll
	static void aDatabase() {
		source = TestDatabase.fresh();
	}

	@AfterAll
	static void close() {
		source.close();
	}

	@BeforeEach
	void clean() {
		this.database.sql("delete from feeds.feed").update();
		given(this.people.find(this.person))
			.willReturn(Optional.of(new Person(this.person, "Ada", "ada@example.org", ZoneId.of("Europe/London"))));
	}

	@Test
	void onlyAHashOfTheTokenIsStored() {
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		assertThat(made.token()).matches("[A-Za-z0-9_-]{32}");
		Map<String, Object> row = this.database.sql("select * from feeds.feed").query().singleRow();
		assertThat(row.get("token_hash")).isEqualTo(FeedDocuments.sha256(made.token().getBytes()));
		assertThat(row.toString() + made).doesNotContain(made.token());
		assertThat(this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL).token())
			.isNotEqualTo(made.token());
	}

	@Test
	void theDocumentIsThereWhenTheFeedIsMade() {
		plan(aTask().build());
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		clearInvocations(this.tasks);
		FeedState state = this.documents.find(made.token(), FeedForm.EVENTS).orElseThrow();
		FeedDocument document = this.documents.read(state).orElseThrow();
		assertThat(document.etag()).isEqualTo(state.etag());
		assertThat(state.lastModified()).isEqualTo("2026-03-10T12:00:00Z");
		assertThat(FeedReading.read(document.octets())).hasSize(1);
		then(this.tasks).should(never()).ofSite(any(), any());
	}

	@Test
	void theSameOctetsKeepTagAndDate() {
		plan(aTask().build());
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		FeedState before = state(made);
		this.clock.advance(Duration.ofHours(1));
		change();
		FeedState after = state(made);
		assertThat(after.etag()).isEqualTo(before.etag());
		assertThat(after.lastModified()).isEqualTo(before.lastModified());
		assertThat(column("built_at")).isNotEqualTo(column("last_modified"));
		assertThat(column("stale")).isEqualTo(false);
	}

	@Test
	void theDateRisesStrictlyEvenWithinASecond() {
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		for (int i = 1; i <= 3; i++) {
			plan(aTask().numbered(i).build());
			change();
			assertThat(state(made).lastModified()).isEqualTo(Instant.parse("2026-03-10T12:00:00Z").plusSeconds(i));
		}
		this.clock.advance(Duration.ofMinutes(1));
		plan(aTask().numbered(9).build());
		change();
		assertThat(state(made).lastModified()).isEqualTo("2026-03-10T12:01:00Z");
	}

	@Test
	void aGroupIsReadByItsMembersOnly() {
		plan(aTask().titled("Mulch the border").build());
		GroupId id = new GroupId(UUID.randomUUID());
		assertThatExceptionOfType(NotThere.class)
			.isThrownBy(() -> this.feeds.createForGroup(id, this.person, FeedOptions.USUAL));
		given(this.groups.find(id)).willReturn(Optional.of(group(id, this.person)));
		PersonId stranger = new PersonId(UUID.randomUUID());
		assertThatExceptionOfType(NotThere.class)
			.isThrownBy(() -> this.feeds.createForGroup(id, stranger, FeedOptions.USUAL));
		NewFeed made = this.feeds.createForGroup(id, this.person, FeedOptions.USUAL);
		assertThat(text(made)).contains("Mulch the border", "X-WR-CALNAME:Plant care: Friends of the mill");
		given(this.groups.find(id)).willReturn(Optional.of(group(id, stranger)));
		this.documents.changed(FeedKind.GROUP, id.value());
		this.documents.rebuildStale(BOX);
		assertThat(text(made)).doesNotContain("Mulch the border", "Friends of the mill").contains("nothing-planned");
	}

	@Test
	void aBedHasACalendarOfWhatStandsInIt() {
		BedId id = new BedId(UUID.randomUUID());
		assertThatExceptionOfType(NotThere.class)
			.isThrownBy(() -> this.feeds.createForBed(id, this.person, FeedOptions.USUAL));
		given(this.beds.find(id)).willReturn(Optional.of(new Bed(id, this.site, "North border", null, null, null)));
		given(this.tasks.ofBed(eq(id), any())).willReturn(List.of(aTask().titled("Stake the asters").build()));
		NewFeed made = this.feeds.createForBed(id, this.person, FeedOptions.USUAL);
		assertThat(text(made)).contains("Stake the asters", "X-WR-CALNAME:Plant care: North border");
		this.documents.rebuildStale(BOX);
		this.documents.changed(FeedKind.BED, UUID.randomUUID());
		assertThat(stale()).isEmpty();
		this.documents.changed(FeedKind.BED, id.value());
		assertThat(stale()).containsExactly(made.id().value());
	}

	@Test
	void aWorkdayReachesItsPeopleAndGroupsAndNobodyElse() {
		GroupId id = new GroupId(UUID.randomUUID());
		given(this.groups.find(id)).willReturn(Optional.of(group(id, this.person)));
		NewFeed ofGroup = this.feeds.createForGroup(id, this.person, FeedOptions.USUAL);
		NewFeed ofPerson = this.feeds.createForPerson(this.person, this.person, FeedOptions.USUAL);
		NewFeed ofSite = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		this.documents.rebuildStale(BOX);
		this.documents.changedFor(List.of(this.person), false);
		assertThat(stale()).containsExactly(ofPerson.id().value());
		this.documents.changedFor(List.of(this.person), true);
		assertThat(stale()).containsExactlyInAnyOrder(ofPerson.id().value(), ofGroup.id().value(), ofSite.id().value());
		this.documents.rebuildStale(BOX);
		this.documents.changed(FeedKind.GROUP, null);
		assertThat(stale()).containsExactly(ofGroup.id().value());
	}

	private List<UUID> stale() {
		return this.database.sql("select feed_id from feeds.feed_document where stale").query(UUID.class).list();
	}

	private String text(NewFeed made) {
		FeedDocument document = this.documents.read(this.documents.find(made.token(), FeedForm.EVENTS).orElseThrow())
			.orElseThrow();
		return new String(document.octets(), StandardCharsets.UTF_8);
	}

	private Group group(GroupId id, PersonId member) {
		return new Group(id, "Friends of the mill", "", ZoneId.of("Europe/London"), "", Set.of(), LocalTime.of(9, 0),
				LocalTime.NOON, 10, Set.of(), PlanTerms.USUAL,
				List.of(new Member(member, "Ada", true, Set.of(), Set.of(), Set.of())),
				List.of(new GroupSite(this.site, member, "Mill garden", "", false)));
	}

	@Test
	void aChangeReachesTheSiteItsPersonAndNobodyElse() {
		NewFeed ofSite = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		NewFeed ofPerson = this.feeds.createForPerson(this.person, this.person, FeedOptions.USUAL);
		NewFeed other = this.feeds.createForSite(new SiteId(UUID.randomUUID()), this.person, FeedOptions.USUAL);
		this.documents.rebuildStale(BOX);
		String[] before = { state(ofSite).etag(), state(ofPerson).etag(), state(other).etag() };
		plan(aTask().build());
		this.clock.advance(Duration.ofMinutes(1));
		change();
		assertThat(state(ofSite).etag()).isNotEqualTo(before[0]);
		assertThat(state(ofPerson).etag()).isNotEqualTo(before[1]);
		assertThat(state(other).etag()).isEqualTo(before[2]);
	}

	@Test
	void manyChangesInARowBuildAPersonsDocumentOnce() {
		NewFeed ofPerson = this.feeds.createForPerson(this.person, this.person, FeedOptions.USUAL);
		this.documents.rebuildStale(BOX);
		String before = state(ofPerson).etag();
		plan(aTask().build());
		this.documents.planChanged(this.site.value(), this.person.value());
		this.documents.planChanged(this.site.value(), this.person.value());
		assertThat(state(ofPerson).etag()).isEqualTo(before);
		assertThat(column("stale")).isEqualTo(true);
		assertThat(this.documents.rebuildStale(BOX)).isEqualTo(1);
		assertThat(state(ofPerson).etag()).isNotEqualTo(before);
		assertThat(this.documents.rebuildStale(BOX)).isZero();
	}

	@Test
	void aStaleDocumentIsServedUntilItIsBuiltAgain() {
		plan(aTask().build());
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		FeedDocument before = read(made).orElseThrow();
		this.database.sql("update feeds.feed_document set stale = true").update();
		plan();
		assertThat(read(made).orElseThrow().octets()).isEqualTo(before.octets());
	}

	@Test
	void everythingIsLookedAtOnceADayAfterMidnight() {
		plan(aTask().on("2026-09-01", "2026-09-01").withdrawn("rain", START).build());
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		this.documents.rebuildStale(BOX);
		this.clock.set(Instant.parse("2026-03-10T23:59:59Z"));
		assertThat(this.documents.rebuildStale(BOX)).isZero();
		this.clock.set(Instant.parse("2026-03-11T00:00:00Z"));
		FeedState before = state(made);
		assertThat(this.documents.rebuildStale(BOX)).isEqualTo(1);
		assertThat(state(made).etag()).isEqualTo(before.etag());
		assertThat(state(made).lastModified()).isEqualTo(before.lastModified());
		// Thirty days after it was withdrawn, the roll alone changes the document.
		this.clock.set(Instant.parse("2026-04-10T00:00:00Z"));
		assertThat(this.documents.rebuildStale(BOX)).isEqualTo(1);
		assertThat(state(made).lastModified()).isEqualTo("2026-04-10T00:00:00Z");
		assertThat(FeedReading.read(read(made).orElseThrow().octets())).extracting(FeedReading.Seen::summary)
			.containsExactly("Nothing planned yet");
	}

	@Test
	void aMissingDocumentIsBuiltWhenItIsRead() {
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		this.database.sql("delete from feeds.feed_document").update();
		assertThat(state(made).etag()).isNull();
		FeedDocument built = read(made).orElseThrow();
		assertThat(built.etag()).isEqualTo(state(made).etag());
	}

	@Test
	void oneThatCannotBeBuiltHoldsUpNoOther() {
		NewFeed broken = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		NewFeed sound = this.feeds.createForPerson(this.person, this.person, FeedOptions.USUAL);
		FeedState before = state(broken);
		given(this.tasks.ofSite(any(), any())).willThrow(new IllegalStateException("broken"));
		given(this.tasks.ofPerson(any(), any())).willReturn(List.of(aTask().build()));
		assertThat(this.documents.rebuildStale(BOX)).isEqualTo(2);
		assertThat(FeedReading.read(read(sound).orElseThrow().octets())).hasSize(1)
			.noneMatch((seen) -> seen.summary().startsWith("Nothing"));
		assertThat(state(broken).etag()).isEqualTo(before.etag());
		assertThat(this.documents.rebuildStale(BOX)).isZero();
		this.clock.advance(Duration.ofMinutes(5));
		assertThat(this.documents.rebuildStale(BOX)).isEqualTo(1);
	}

	@Test
	void whatAnotherTransactionWorksOnIsSkipped() throws Exception {
		this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		this.documents.rebuildStale(BOX);
		CountDownLatch locked = new CountDownLatch(1);
		CountDownLatch done = new CountDownLatch(1);
		Thread other = new Thread(() -> this.transaction.executeWithoutResult((status) -> {
			this.store.markStale(this.site.value(), this.person.value());
			locked.countDown();
			await(done);
		}));
		other.start();
		await(locked);
		assertThat(this.documents.rebuildStale(BOX)).isZero();
		done.countDown();
		other.join(10_000);
		assertThat(this.documents.rebuildStale(BOX)).isEqualTo(1);
	}

	/** Or the change would be in no document until the next day. */
	@Test
	void aChangeWhileADocumentIsBuiltFromTheTasksBeforeIsNotLost() throws Exception {
		this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		CountDownLatch read = new CountDownLatch(1);
		CountDownLatch go = new CountDownLatch(1);
		willAnswer((call) -> {
			read.countDown();
			await(go);
			return List.of(aTask().build());
		}).given(this.tasks).ofSite(any(), any());
		Thread builder = new Thread(() -> this.transaction
			.executeWithoutResult((status) -> this.documents.buildNow(this.site.value(), this.person.value())));
		builder.start();
		await(read);
		Thread change = new Thread(() -> this.documents.planChanged(this.site.value(), this.person.value()));
		change.start();
		Awaitility.await().until(() -> !change.isAlive() || this.database.sql("""
				select count(*) from pg_stat_activity
				where datname = current_database() and wait_event_type = 'Lock'
				""").query(Long.class).single() > 0);
		go.countDown();
		builder.join(10_000);
		change.join(10_000);
		assertThat(column("stale")).isEqualTo(true);
	}

	@Test
	void aFetchIsNotedAtMostOnceAnHour() {
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		this.documents.find(made.token(), FeedForm.EVENTS);
		assertThat(fetched()).isEqualTo(START);
		this.clock.advance(Duration.ofMinutes(59));
		this.documents.find(made.token(), FeedForm.EVENTS);
		assertThat(fetched()).isEqualTo(START);
		this.clock.advance(Duration.ofMinutes(1));
		this.documents.find(made.token(), FeedForm.EVENTS);
		assertThat(fetched()).isEqualTo(START.plus(Duration.ofHours(1)));
	}

	@Test
	void revokingDropsTheDocumentForGood() {
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		assertThatExceptionOfType(NotThere.class)
			.isThrownBy(() -> this.feeds.revoke(made.id(), new PersonId(UUID.randomUUID())));
		assertThat(state(made).revoked()).isFalse();
		this.feeds.revoke(made.id(), this.person);
		this.clock.advance(Duration.ofHours(1));
		this.feeds.revoke(made.id(), this.person);
		assertThat(state(made).revoked()).isTrue();
		assertThat(read(made)).isEmpty();
		assertThat(this.documents.rebuildStale(BOX)).isZero();
		assertThat(this.feeds.list(this.person)).singleElement()
			.isEqualTo(
					new FeedInfo(made.id(), FeedKind.SITE, this.site.value(), START, START, null, FeedOptions.USUAL));
	}

	@Test
	void whatIsAbandonedStaysDeadAndTellsNobody() {
		NewFeed made = this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		this.feeds.abandon(this.site);
		assertThat(state(made).revoked()).isTrue();
		assertThat(read(made)).isEmpty();
		assertThat(this.feeds.list(this.person)).isEmpty();
		assertThat(this.database.sql("select * from feeds.feed").query().singleRow().toString())
			.doesNotContain(this.person.toString(), this.site.toString());
	}

	@Test
	void thereIsABoundOnLivingFeeds() {
		for (int i = 0; i < 50; i++) {
			this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		}
		FeedId first = this.feeds.ofSite(this.site).get(0).id();
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL));
		this.feeds.revoke(first, this.person);
		this.feeds.createForSite(this.site, this.person, FeedOptions.USUAL);
		assertThat(this.feeds.list(this.person)).hasSize(51);
	}

	@Test
	void nobodyGetsAFeedOfAnUnknownPerson() {
		assertThatExceptionOfType(NotThere.class).isThrownBy(
				() -> this.feeds.createForPerson(new PersonId(UUID.randomUUID()), this.person, FeedOptions.USUAL));
	}

	@Test
	void anUnusableBaseAddressIsToldAtOnce() {
		for (String base : List.of("leafward.example", "ftp://leafward.example", "https://a b", "https://x/?q")) {
			assertThatExceptionOfType(BadInput.class)
				.isThrownBy(() -> new FeedBuilder(this.tasks, this.register, this.people, this.books, List.of(),
						mock(FeedSites.class), base))
				.satisfies((refusal) -> assertThat(refusal.where()).isEqualTo("leafward.base-url"));
		}
	}

	/** What the listener and the worker do one after the other. */
	private void change() {
		this.documents.planChanged(this.site.value(), this.person.value());
		this.documents.rebuildStale(BOX);
	}

	private void plan(CareTask... planned) {
		given(this.tasks.ofSite(any(), any())).willReturn(List.of(planned));
		given(this.tasks.ofPerson(any(), any())).willReturn(List.of(planned));
	}

	private Optional<FeedDocument> read(NewFeed made) {
		return this.documents.find(made.token(), FeedForm.EVENTS).flatMap(this.documents::read);
	}

	private FeedState state(NewFeed made) {
		return this.documents.find(made.token(), FeedForm.EVENTS).orElseThrow();
	}

	private Object column(String name) {
		return this.database.sql("select " + name + " from feeds.feed_document").query().singleValue();
	}

	private Instant fetched() {
		this.fetches.write();
		return this.feeds.list(this.person).get(0).lastFetchedAt();
	}

	private static void await(CountDownLatch latch) {
		try {
			assertThat(latch.await(10, TimeUnit.SECONDS)).isTrue();
		}
		catch (InterruptedException ex) {
			throw new IllegalStateException(ex);
		}
	}

}
