package org.leafward.feeds;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.workdays.Groups;
import org.leafward.feeds.content.FeedSites;
import org.leafward.accounts.People;
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
import org.leafward.register.Beds;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.feeds.core.CareTaskFixture.aTask;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.clearInvocations;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;

/** Feeds that nobody fetches end, and say so before. */
class FeedExpiryTests {

	/** The last day of a month that has no twin 18 months on. */
	private static final Instant START = Instant.parse("2026-08-31T12:00:00Z");

	/** 18 months on; 2028 is a leap year. */
	private static final LocalDate END = LocalDate.of(2028, 2, 29);

	private static HikariDataSource source;

	private final JdbcClient database = JdbcClient.create(source);

	private final TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(source));

	private final FeedTable table = TablesFixture.feeds(this.database);

	private final SettableClock clock = new SettableClock(START);

	private final TaskCalendar tasks = mock();

	private final Register register = mock();

	private final List<Object> told = new ArrayList<>();

	private final DocumentTable store = TablesFixture.documents(this.database);

	private final PollBoard board = PollFixture.deaf(source);

	private final Fetches fetches = PollFixture.fetches(source, this.board, this.clock);

	private final FeedDocuments documents = new FeedDocuments(this.table, this.store,
			new FeedBuilder(this.tasks, this.register, mock(People.class),
					new Phrasebooks(new KnowledgeFiles(""), new KnowledgeReader(), List.of()), List.of(),
					mock(FeedSites.class), "https://leafward.example"),
			this.board, this.fetches, this.transaction, this.clock, DataSize.ofMegabytes(1));

	private final Feeds feeds = new Feeds(this.table, this.documents, this.board, this.register, mock(People.class),
			mock(Groups.class), mock(Beds.class), this.clock);

	private final FeedExpiry expiry = new FeedExpiry(this.table, this.told::add, this.transaction, this.clock);

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
		CareTask task = aTask().build();
		given(this.tasks.ofSite(any(), any())).willReturn(List.of(task));
	}

	@Test
	void theCalendarSaysFromSixtyDaysBeforeThatItEnds() {
		NewFeed made = make();
		on(END.minusDays(61));
		assertThat(shown(made)).noneMatch((entry) -> entry.uid().startsWith("ends-"));
		on(END.minusDays(60));
		assertThat(shown(made)).filteredOn((entry) -> entry.uid().startsWith("ends-"))
			.singleElement()
			.satisfies((entry) -> {
				assertThat(entry.from()).isEqualTo(END);
				assertThat(entry.summary()).isEqualTo("This calendar ends on Tue 29 Feb 2028 unless it is fetched");
				assertThat(entry.description()).contains("Tue 29 Feb 2028", "as soon as a program fetches it");
			});
		FeedState before = this.table.findByHash(hash(made), FeedForm.EVENTS).orElseThrow().state();
		on(END.minusDays(30));
		assertThat(this.table.findByHash(hash(made), FeedForm.EVENTS).orElseThrow().state().etag())
			.as("the same announcement, the same octets")
			.isEqualTo(before.etag());
	}

	@Test
	void aFetchTakesTheAnnouncementAwayAndBuildsOnce() {
		NewFeed made = make();
		on(END.minusDays(20));
		assertThat(shown(made)).anyMatch((entry) -> entry.uid().startsWith("ends-"));
		clearInvocations(this.tasks);
		fetch(made);
		then(this.tasks).should(never()).ofSite(any(), any());
		assertThat(this.documents.rebuildStale(Duration.ofSeconds(1))).isOne();
		assertThat(shown(made)).noneMatch((entry) -> entry.uid().startsWith("ends-"));
		for (int hour = 1; hour < 5; hour++) {
			this.clock.advance(Duration.ofHours(1));
			fetch(made);
		}
		assertThat(this.documents.rebuildStale(Duration.ofSeconds(1))).as("a fetch builds nothing").isZero();
		on(END);
		assertThat(this.expiry.expire()).isZero();
	}

	@Test
	void aLaterAnnouncementIsNewerThanAnEarlierOne() {
		NewFeed made = make();
		on(END.minusDays(1));
		fetch(made);
		LocalDate second = END.minusDays(1).plusMonths(18);
		on(second.minusDays(5));
		String text = new String(read(made).orElseThrow().octets());
		String entry = text.substring(text.indexOf("UID:ends-")).replace("\r\n ", "");
		// Sequences never fall (RFC 5545, section 3.8.7.4): 546 days from the making to
		// the last fetch.
		assertThat(entry).contains("SEQUENCE:546\r\n", "unless it is fetched");
	}

	@Test
	void onItsLastDayItEndsAndThoseWhoListenAreTold() {
		NewFeed made = make();
		NewFeed used = make();
		on(END.minusDays(1));
		fetch(used);
		assertThat(this.expiry.expire()).isZero();
		on(END);
		assertThat(this.expiry.expire()).isOne();
		assertThat(this.told).containsExactly(new FeedExpired(made.id().value(), this.person.value()));
		FeedState state = this.table.findByHash(hash(made), FeedForm.EVENTS).orElseThrow().state();
		assertThat(state.revoked()).isTrue();
		assertThat(state.expired()).isTrue();
		assertThat(read(made)).isEmpty();
		assertThat(this.table.findByHash(hash(used), FeedForm.EVENTS).orElseThrow().state().revoked()).isFalse();
		assertThat(this.expiry.expire()).as("again does nothing").isZero();
	}

	@Test
	void manyEndInPieces() {
		for (int i = 0; i < 230; i++) {
			this.table.add(new FeedId(UUID.randomUUID()), FeedKind.SITE, UUID.randomUUID(), this.person,
					FeedDocuments.sha256(("feed " + i).getBytes()), FeedOptions.USUAL, START);
		}
		on(END);
		assertThat(this.expiry.expire()).isEqualTo(230);
		assertThat(this.told).hasSize(230);
	}

	private NewFeed make() {
		return this.feeds.createForSite(new SiteId(UUID.randomUUID()), this.person, FeedOptions.USUAL);
	}

	/** A program asks, and that is written down. */
	private void fetch(NewFeed made) {
		this.documents.find(made.token(), FeedForm.EVENTS);
		this.fetches.write();
	}

	private Optional<FeedDocument> read(NewFeed made) {
		return this.store.document(hash(made), FeedForm.EVENTS);
	}

	private static byte[] hash(NewFeed made) {
		return FeedDocuments.sha256(made.token().getBytes());
	}

	/** Goes to a day, and lets the job build what is due. */
	private void on(LocalDate day) {
		this.clock.set(day.atTime(6, 0).toInstant(ZoneOffset.UTC));
		this.documents.rebuildStale(Duration.ofSeconds(5));
	}

	private List<FeedReading.Seen> shown(NewFeed made) {
		return FeedReading.read(read(made).orElseThrow().octets());
	}

}
