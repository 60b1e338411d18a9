package org.leafward.reminders.links;

import com.zaxxer.hikari.HikariDataSource;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.leafward.care.TaskId;
import org.leafward.reminders.Series;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.core.Links.Act;
import org.leafward.reminders.store.ServerKeyTable;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

import static org.assertj.core.api.Assertions.assertThat;

/** The addresses in messages, and the key behind them, in a real database. */
class SignedLinksTests {

	private static final UUID ID = TaskFixture.id("reminder");

	private final HikariDataSource source = TestDatabase.fresh();

	private final JdbcClient database = JdbcClient.create(this.source);

	private final JdbcTransactionManager transactions = new JdbcTransactionManager(this.source);

	@AfterEach
	void close() {
		this.source.close();
	}

	private SignedLinks node() {
		return node("https://plants.example.org");
	}

	private SignedLinks node(String baseUrl) {
		return new SignedLinks(new ServerKeyTable(this.database), this.transactions, baseUrl);
	}

	private List<Integer> keys() {
		return this.database.sql("select length(value) from reminders.server_key where name = 'links'")
			.query(Integer.class)
			.list();
	}

	@Test
	void addressesAreShortAndWhole() {
		for (String base : List.of("https://plants.example.org", "https://plants.example.org/",
				"https://plants.example.org//")) {
			SignedLinks links = node(base);
			assertThat(links.home()).isEqualTo("https://plants.example.org");
			assertThat(links.wishes()).isEqualTo("https://plants.example.org/reminders");
			assertThat(links.task(new TaskId(ID))).isEqualTo("https://plants.example.org/tasks/" + ID);
			assertThat(links.act(ID, Act.DONE)).matches("https://plants\\.example\\.org/r/[A-Za-z0-9_-]{44}")
				.hasSizeLessThan(100);
			String stop = links.stop(TaskFixture.ADA, "mail", Series.TONIGHT);
			assertThat(stop).matches("https://plants\\.example\\.org/u/[A-Za-z0-9_-]{50}").hasSizeLessThan(100);
			assertThat(URI.create(stop).getPath()).hasSizeLessThan(60);
		}
	}

	@Test
	void theKeyIsMadeAtFirstNeedAndHoldsOnAllNodes() {
		SignedLinks one = node();
		one.wishes();
		assertThat(keys()).isEmpty();
		String act = one.act(ID, Act.SKIP);
		String stop = one.stop(TaskFixture.ADA, "push", Series.SINGLE);
		assertThat(keys()).containsExactly(32);
		SignedLinks other = node();
		assertThat(other.readAct(end(act))).contains(new ActLink(ID, Act.SKIP));
		assertThat(other.readStop(end(stop))).contains(new StopLink(TaskFixture.ADA, "push", Series.SINGLE));
		assertThat(other.act(ID, Act.SKIP)).isEqualTo(act);
		this.database.sql("delete from reminders.server_key").update();
		assertThat(node().readAct(end(act))).as("another key, made anew").isEmpty();
	}

	@Test
	void nodesThatStartAtOnceHaveOneKey() throws Exception {
		ExecutorService threads = Executors.newFixedThreadPool(5);
		CountDownLatch go = new CountDownLatch(1);
		List<Future<String>> made = new ArrayList<>();
		for (int i = 0; i < 5; i++) {
			SignedLinks node = node();
			made.add(threads.submit(() -> {
				go.await();
				return node.act(ID, Act.DONE);
			}));
		}
		go.countDown();
		String first = made.get(0).get(30, TimeUnit.SECONDS);
		for (Future<String> one : made) {
			assertThat(one.get(30, TimeUnit.SECONDS)).isEqualTo(first);
		}
		threads.shutdown();
		assertThat(keys()).containsExactly(32);
	}

	@Test
	void theKeyStaysWhenWhoeverNeededItFails() {
		SignedLinks node = node();
		List<String> made = new ArrayList<>();
		new TransactionTemplate(this.transactions).executeWithoutResult((status) -> {
			made.add(node.act(ID, Act.DONE));
			status.setRollbackOnly();
		});
		assertThat(keys()).containsExactly(32);
		assertThat(node().act(ID, Act.DONE)).isEqualTo(made.get(0));
	}

	private static String end(String address) {
		return address.substring(address.lastIndexOf('/') + 1);
	}

}
