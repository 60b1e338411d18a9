package org.leafward.feeds.poll;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.FeedDocument;
import org.leafward.feeds.FeedForm;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.core.PollIndex.Answer;
import org.leafward.feeds.store.DocumentTable;
import org.leafward.feeds.store.DocumentTable.Built;
import org.leafward.feeds.store.FeedTable;
import org.leafward.feeds.store.TablesFixture;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/** Two nodes on one database: what one does, the other one answers. */
class PollBoardTests {

	private static final Instant NOW = Instant.parse("2026-11-26T10:00:00Z");

	private final HikariDataSource source = TestDatabase.fresh();

	private final JdbcClient database = JdbcClient.create(this.source);

	private final FeedTable feeds = TablesFixture.feeds(this.database);

	private final DocumentTable documents = TablesFixture.documents(this.database);

	private final TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(this.source));

	private final PersonId owner = new PersonId(UUID.randomUUID());

	private PollBoard here;

	private PollBoard there;

	@BeforeEach
	void twoNodes() {
		made("before");
		this.here = PollFixture.listening(this.source);
		this.there = PollFixture.listening(this.source);
		await().until(() -> this.here.ready() && this.there.ready());
	}

	@AfterEach
	void close() {
		this.here.destroy();
		this.there.destroy();
		this.source.close();
	}

	@Test
	void whatWasThereBeforeIsInMemory() {
		assertThat(this.there.find(hash("before"), FeedForm.EVENTS).modified()).isEqualTo(NOW.getEpochSecond());
		assertThat(this.there.find(hash("before"), FeedForm.TODOS)).as("has no document").isNull();
		assertThat(this.there.find(hash("never"), FeedForm.EVENTS)).isNull();
	}

	@Test
	void aNewDocumentReachesBoth() {
		FeedId feed = made("new");
		await().untilAsserted(() -> assertThat(this.there.find(hash("new"), FeedForm.EVENTS)).isNotNull());
		store(feed, FeedForm.TODOS, 7);
		store(feed, FeedForm.EVENTS, 8);
		await().untilAsserted(() -> {
			for (PollBoard node : new PollBoard[] { this.here, this.there }) {
				assertThat(node.find(hash("new"), FeedForm.TODOS).tag()).startsWith(7);
				assertThat(node.find(hash("new"), FeedForm.EVENTS).tag()).startsWith(8);
			}
		});
	}

	@Test
	void anAddressIsDeadWhenTheTransactionThatKilledItHasEnded() {
		for (int i = 0; i < 20; i++) {
			String name = "feed " + i;
			FeedId feed = made(name);
			await().until(() -> this.here.find(hash(name), FeedForm.EVENTS) != null);
			this.transaction.executeWithoutResult((status) -> {
				this.feeds.revoke(feed, this.owner, NOW);
				this.here.settle();
				assertThat(this.here.find(hash(name), FeedForm.EVENTS).tag()).as("not before").isNotNull();
			});
			assertThat(this.here.find(hash(name), FeedForm.EVENTS)).isEqualTo(Answer.dead(false));
			await().untilAsserted(() -> assertThat(this.there.find(hash(name), FeedForm.EVENTS).tag()).isNull());
		}
	}

	/** Or as many at once as there are connections would wait for each other. */
	@Test
	void waitingTakesNoSecondConnection() {
		FeedId feed = made("last");
		await().until(() -> this.here.find(hash("last"), FeedForm.EVENTS) != null);
		// One for each node that listens, and the one of the transaction.
		this.source.setMaximumPoolSize(3);
		this.source.getHikariPoolMXBean().softEvictConnections();
		this.source.setConnectionTimeout(1_000);
		long begin = System.nanoTime();
		this.transaction.executeWithoutResult((status) -> {
			this.feeds.revoke(feed, this.owner, NOW);
			this.here.settle();
		});
		assertThat(this.here.find(hash("last"), FeedForm.EVENTS)).isEqualTo(Answer.dead(false));
		assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(Duration.ofSeconds(1));
	}

	@Test
	void whatIsRolledBackChangesNothing() {
		FeedId feed = made("kept");
		await().until(() -> this.here.find(hash("kept"), FeedForm.EVENTS) != null);
		this.transaction.executeWithoutResult((status) -> {
			this.feeds.revoke(feed, this.owner, NOW);
			this.here.settle();
			status.setRollbackOnly();
		});
		this.here.settle();
		assertThat(this.here.find(hash("kept"), FeedForm.EVENTS).tag()).isNotNull();
	}

	@Test
	void aDeletedFeedIsForgotten() {
		FeedId feed = made("gone");
		await().until(() -> this.there.find(hash("gone"), FeedForm.EVENTS) != null);
		this.database.sql("delete from feeds.feed where id = ?").param(feed.value()).update();
		this.there.settle();
		assertThat(this.there.find(hash("gone"), FeedForm.EVENTS)).isNull();
	}

	@Test
	void aNodeThatCanHearNothingAnswersNothingAndComesBack() {
		this.database.sql("""
				select pg_terminate_backend(pid) from pg_stat_activity
				where datname = current_database() and query like 'listen %' and pid <> pg_backend_pid()
				""").query(Boolean.class).list();
		await().atMost(Duration.ofSeconds(20)).until(() -> !this.there.ready());
		assertThat(this.there.find(hash("before"), FeedForm.EVENTS)).as("the database has to be asked").isNull();
		FeedId meanwhile = made("meanwhile");
		this.feeds.revoke(meanwhile, this.owner, NOW);
		await().atMost(Duration.ofSeconds(20)).until(this.there::ready);
		assertThat(this.there.find(hash("before"), FeedForm.EVENTS)).isNotNull();
		assertThat(this.there.find(hash("meanwhile"), FeedForm.EVENTS).tag()).isNull();
	}

	@Test
	void fetchesAreWrittenOnceAnHourAndTellWhenTheNextOneIsLikely() {
		await().until(() -> this.here.find(hash("before"), FeedForm.EVENTS) != null);
		Fetches early = PollFixture.fetches(this.source, this.here, Clock.fixed(NOW, ZoneOffset.UTC));
		early.asked(hash("before"), null);
		early.asked(hash("before"), null);
		assertThat(early.write()).isEqualTo(1);
		Fetches late = PollFixture.fetches(this.source, this.here,
				Clock.fixed(NOW.plus(Duration.ofHours(6)), ZoneOffset.UTC));
		late.asked(hash("before"), null);
		assertThat(late.write()).isEqualTo(1);
		assertThat(this.database.sql("select next_poll at time zone 'UTC' from feeds.feed_document")
			.query(LocalDateTime.class)
			.single()).as("six hours after the last one").isEqualTo("2026-11-26T22:00:00");
	}

	private FeedId made(String name) {
		FeedId id = new FeedId(UUID.randomUUID());
		this.feeds.add(id, FeedKind.SITE, UUID.randomUUID(), this.owner, hash(name), FeedOptions.USUAL, NOW);
		store(id, FeedForm.EVENTS, 1);
		return id;
	}

	private void store(FeedId feed, FeedForm form, int tag) {
		this.documents.store(new Built(feed, form,
				new FeedDocument(new byte[] { 1, 2, 3, 4 },
						"%064x".formatted(tag).replaceFirst("^00", "%02x".formatted(tag)), NOW),
				0, LocalDate.of(2026, 11, 26), NOW));
	}

	private static byte[] hash(String name) {
		byte[] hash = new byte[32];
		byte[] octets = name.getBytes();
		System.arraycopy(octets, 0, hash, 0, octets.length);
		System.arraycopy(octets, 0, hash, 32 - octets.length, octets.length);
		return hash;
	}

}
