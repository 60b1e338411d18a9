package org.leafward.reminders.store;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.PushKeys;
import org.leafward.reminders.PushSubscription;
import org.leafward.reminders.TaskFixture;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;

class PushTableTests {

	private static final PersonId BEN = new PersonId(TaskFixture.id("ben"));

	private static final PushKeys KEYS = new PushKeys(new byte[65], new byte[16]);

	private HikariDataSource source;

	private PushTable table;

	@BeforeEach
	void freshDatabase() {
		this.source = TestDatabase.fresh();
		this.table = new PushTable(JdbcClient.create(this.source));
	}

	@AfterEach
	void close() {
		this.source.close();
	}

	private UUID save(PersonId person, String endpoint, long at) {
		UUID id = UUID.randomUUID();
		this.table.save(new PushSubscription(id, person, "https://push.example.net/" + endpoint, KEYS, endpoint,
				Instant.ofEpochSecond(at), null, 0));
		return id;
	}

	private List<String> labels(PersonId person) {
		return this.table.of(person).stream().map(PushSubscription::label).toList();
	}

	@Test
	void keepsWhatItIsGiven() {
		PushSubscription one = new PushSubscription(UUID.randomUUID(), ADA, "https://push.example.net/a",
				new PushKeys(new byte[65], "0123456789abcdef".getBytes(StandardCharsets.US_ASCII)), "Größe 🌱",
				Instant.ofEpochSecond(5), null, 0);
		this.table.save(one);
		assertThat(this.table.of(ADA)).containsExactly(one);
		assertThat(this.table.of(BEN)).isEmpty();
	}

	@Test
	void theOneThatWasNotUsedForLongestGoes() {
		UUID first = save(ADA, "b0", 0);
		for (int i = 1; i < PushSubscription.MOST; i++) {
			save(ADA, "b" + i, i);
		}
		this.table.taken(first, Instant.ofEpochSecond(100));
		save(BEN, "other", 0);
		save(ADA, "new", 50);
		assertThat(labels(ADA)).hasSize(PushSubscription.MOST).contains("b0", "new").doesNotContain("b1");
		assertThat(labels(BEN)).containsExactly("other");
	}

	@Test
	void aBrowserBelongsToWhoeverSignedInThereLast() {
		UUID id = save(ADA, "shared", 1);
		this.table.taken(id, Instant.ofEpochSecond(2));
		this.table.failed(id, Instant.ofEpochSecond(3));
		save(ADA, "shared", 4);
		assertThat(this.table.of(ADA)).singleElement()
			.matches((one) -> one.id().equals(id) && one.failures() == 0
					&& Instant.ofEpochSecond(2).equals(one.lastOkAt()));
		save(BEN, "shared", 5);
		assertThat(this.table.of(ADA)).isEmpty();
		assertThat(this.table.of(BEN)).singleElement().matches((one) -> one.id().equals(id) && one.lastOkAt() == null);
	}

	@Test
	void onlyItsOwnerRemovesIt() {
		UUID id = save(ADA, "phone", 1);
		assertThat(this.table.remove(BEN, id)).isFalse();
		assertThat(labels(ADA)).containsExactly("phone");
		assertThat(this.table.remove(ADA, id)).isTrue();
		assertThat(this.table.remove(ADA, id)).isFalse();
		assertThat(labels(ADA)).isEmpty();
	}

	@Test
	void labelsOfManyAreReadAtOnce() {
		save(ADA, "phone", 2);
		save(ADA, "laptop", 1);
		save(BEN, "tablet", 1);
		assertThat(this.table.labels(List.of(ADA, BEN, new PersonId(TaskFixture.id("nobody")))))
			.isEqualTo(Map.of(ADA, "laptop, phone", BEN, "tablet"));
	}

	@Test
	void isToldTakenAwayHandedOverAndForgotten() {
		OwnPush own = new OwnPush(this.table, JdbcClient.create(this.source));
		save(ADA, "phone", 2);
		assertThat(own.of(ADA).get("push-messages")).singleElement()
			.matches((row) -> row.get("label").equals("phone") && row.get("service").equals("push.example.net"))
			// The endpoint and the keys are secrets.
			.matches((row) -> row.keySet().equals(Set.of("label", "service", "createdAt", "lastTakenAt")));
		for (int i = 0; i < PushSubscription.MOST; i++) {
			save(BEN, "b" + i, 10 + i);
		}
		own.handOver(ADA, BEN);
		assertThat(labels(ADA)).isEmpty();
		assertThat(labels(BEN)).hasSize(PushSubscription.MOST).doesNotContain("phone");
		own.forget(BEN);
		assertThat(labels(BEN)).isEmpty();
	}

	@Test
	void nodesThatNeedAKeyAtOnceGetTheSame() throws Exception {
		ServerKeyTable keys = new ServerKeyTable(JdbcClient.create(this.source));
		ExecutorService nodes = Executors.newFixedThreadPool(4);
		try {
			List<Callable<String>> calls = new ArrayList<>();
			for (int i = 0; i < 12; i++) {
				String mine = "key of node " + i;
				calls.add(() -> new String(keys.of("trial", () -> mine.getBytes(StandardCharsets.UTF_8)),
						StandardCharsets.UTF_8));
			}
			List<String> got = new ArrayList<>();
			for (Future<String> one : nodes.invokeAll(calls)) {
				got.add(one.get());
			}
			assertThat(got).hasSize(12).containsOnly(got.get(0));
		}
		finally {
			nodes.shutdownNow();
		}
		assertThat(keys.of("other", () -> new byte[] { 7 })).containsExactly(7);
	}

}
