package org.leafward.reminders.store;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.RowFixture;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.Topic;
import org.leafward.reminders.store.ClaimTable.Bounds;
import org.leafward.reminders.store.ClaimTable.End;
import org.leafward.reminders.store.ClaimTable.Reaped;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.TaskFixture.ADA;

class ClaimTableTests {

	private static final LocalDate DAY = LocalDate.parse("2026-11-12");

	private static final Instant DUE = Instant.parse("2026-11-12T06:00:00Z");

	private static final Instant UNTIL = DUE.plus(Duration.ofMinutes(10));

	private static final PersonId BEN = new PersonId(TaskFixture.id("ben"));

	private static final UUID TOKEN = TaskFixture.id("token");

	private static final Bounds ONE = new Bounds(1, 50);

	private static final End SENT = End.of(ReminderState.SENT);

	private static HikariDataSource source;

	private JdbcClient database;

	private ClaimTable table;

	@BeforeAll
	static void aDatabase() {
		source = TestDatabase.fresh();
	}

	@BeforeEach
	void empty() {
		this.database = JdbcClient.create(source);
		this.database.sql("truncate reminders.reminder, reminders.message").update();
		this.table = new ClaimTable(this.database);
	}

	@AfterAll
	static void close() {
		source.close();
	}

	private UUID pending(PersonId person, String task) {
		return RowFixture.pending(this.database, person, task, DAY);
	}

	private List<UUID> claim(Instant now) {
		return this.table.claim(now, UNTIL, TOKEN, ONE, "mail").stream().map(Claimed::id).toList();
	}

	@Test
	void takesARowFromTheInstantItIsDue() {
		UUID row = pending(ADA, "one");
		assertThat(claim(DUE.minusMillis(1))).isEmpty();
		assertThat(claim(DUE)).containsExactly(row);
		assertThat(RowFixture.state(this.database, row)).isEqualTo(ReminderState.CLAIMED);
	}

	@Test
	void takesARowOnce() {
		pending(ADA, "one");
		assertThat(claim(DUE)).hasSize(1);
		assertThat(claim(DUE)).isEmpty();
	}

	@ParameterizedTest
	@EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "PENDING")
	void takesPendingRowsOnly(ReminderState state) {
		RowFixture.put(this.database, pending(ADA, "one"), state, UNTIL);
		assertThat(claim(DUE)).isEmpty();
	}

	@Test
	void takesAllDueRowsOfOnePersonAndNoOthers() {
		List<UUID> ada = List.of(pending(ADA, "a1"), pending(ADA, "a2"), pending(ADA, "a3"));
		List<UUID> ben = List.of(pending(BEN, "b1"), pending(BEN, "b2"));
		List<List<UUID>> claims = List.of(claim(DUE), claim(DUE), claim(DUE));
		assertThat(claims.get(2)).isEmpty();
		assertThat(claims.subList(0, 2)).anySatisfy((rows) -> assertThat(rows).hasSameElementsAs(ada))
			.anySatisfy((rows) -> assertThat(rows).hasSameElementsAs(ben));
	}

	@Test
	void takesNoMoreThanAsked() {
		List.of("a", "b", "c").forEach((task) -> pending(ADA, task));
		assertThat(this.table.claim(DUE, UNTIL, TOKEN, new Bounds(1, 2), "mail")).hasSize(2);
		assertThat(this.table.claim(DUE, UNTIL, TOKEN, new Bounds(1, 2), "mail")).hasSize(1);
	}

	@Test
	void tellsWhatTheSenderNeeds() {
		UUID row = pending(ADA, "one");
		Claimed claimed = this.table.claim(DUE, UNTIL, TOKEN, ONE, "mail").get(0);
		assertThat(claimed).isEqualTo(new Claimed(row, ADA, "mail", Topic.TO_DO, RowFixture.wanted("one", DAY).task(),
				DAY, false, "morning:2026-11-12", RowFixture.wanted("one", DAY).expiresAt(), 1, claimed.message()));
	}

	/**
	 * PostgreSQL's SKIP LOCKED, seen from a second connection while the first is open.
	 */
	@Test
	void doesNotShareOutAPersonsRowsBetweenTwoNodes() throws Exception {
		pending(ADA, "a1");
		pending(ADA, "a2");
		pending(BEN, "b1");
		try (Connection open = source.getConnection()) {
			open.setAutoCommit(false);
			ClaimTable first = new ClaimTable(JdbcClient.create(new SingleConnectionDataSource(open, true)));
			PersonId taken = first.claim(DUE, UNTIL, UUID.randomUUID(), ONE, "mail").get(0).person();
			List<Claimed> others = this.table.claim(DUE, UNTIL, TOKEN, ONE, "mail");
			assertThat(others).isNotEmpty().extracting(Claimed::person).doesNotContain(taken);
			assertThat(this.table.claim(DUE, UNTIL, TOKEN, ONE, "mail")).isEmpty();
			open.commit();
		}
		assertThat(this.table.claim(DUE, UNTIL, TOKEN, ONE, "mail")).isEmpty();
	}

	/** The other node has seen the first of the rows and is about to take the rest. */
	@Test
	void leavesAPersonAloneWhoseFirstRowAnotherNodeHolds() throws Exception {
		pending(ADA, "a1");
		pending(ADA, "a2");
		UUID ben = pending(BEN, "b1");
		try (Connection open = source.getConnection()) {
			open.setAutoCommit(false);
			JdbcClient other = JdbcClient.create(new SingleConnectionDataSource(open, true));
			other.sql(
					"select id from reminders.reminder where person_id = ? order by next_try_at, id limit 1 for update")
				.param(ADA.value())
				.query(UUID.class)
				.single();
			assertThat(claim(DUE)).containsExactly(ben);
			assertThat(claim(DUE)).isEmpty();
			open.rollback();
		}
		assertThat(claim(DUE)).hasSize(2);
	}

	@Test
	void finishesUnderItsTokenOnly() {
		UUID row = pending(ADA, "one");
		claim(DUE);
		assertThat(this.table.finish(UUID.randomUUID(), Map.of(row, SENT))).isEmpty();
		assertThat(RowFixture.state(this.database, row)).isEqualTo(ReminderState.CLAIMED);
		assertThat(this.table.finish(TOKEN, Map.of(row, SENT))).containsExactly(row);
		assertThat(this.table.finish(TOKEN, Map.of(row, new End(ReminderState.FAILED, "late")))).isEmpty();
		assertThat(RowFixture.state(this.database, row)).isEqualTo(ReminderState.SENT);
	}

	@Test
	void putsARowBackForALaterTry() {
		UUID row = pending(ADA, "one");
		claim(DUE);
		Instant next = DUE.plus(Duration.ofMinutes(5));
		assertThat(this.table.retry(UUID.randomUUID(), row, next, "not mine")).isZero();
		assertThat(this.table.retry(TOKEN, row, next, "451")).isOne();
		assertThat(claim(next.minusMillis(1))).isEmpty();
		assertThat(this.table.claim(next, UNTIL, TOKEN, ONE, "mail")).singleElement()
			.extracting(Claimed::id, Claimed::attempts)
			.containsExactly(row, 2);
	}

	@Test
	void tellsWhichRowsItsTokenHolds() {
		UUID row = pending(ADA, "one");
		claim(DUE);
		assertThat(this.table.held(UUID.randomUUID(), List.of(row))).isEmpty();
		assertThat(this.table.held(TOKEN, List.of(row))).containsExactly(row);
	}

	@Test
	void whatGoesOutTogetherHasOneMessage() {
		pending(ADA, "a1");
		pending(ADA, "a2");
		RowFixture.pending(this.database, ADA, "another morning", DAY.minusDays(1));
		pending(BEN, "b1");
		List<Claimed> rows = this.table.claim(DUE, UNTIL, TOKEN, new Bounds(10, 50), "mail");
		assertThat(rows).hasSize(4).extracting(Claimed::message).doesNotContainNull();
		assertThat(rows.stream().map(Claimed::message).distinct()).hasSize(3);
		assertThat(rows.stream().map((row) -> row.person() + row.bundle() + row.message()).distinct()).hasSize(3);
	}

	/** Or what comes up meanwhile would be in another message. */
	@Test
	void aMessageThatWasNeverWrittenIsForgotten() {
		UUID row = pending(ADA, "one");
		UUID first = this.table.claim(DUE, UNTIL, TOKEN, ONE, "mail").get(0).message();
		this.table.postpone(TOKEN, Map.of(row, DUE));
		UUID second = this.table.claim(DUE, UNTIL, UUID.randomUUID(), ONE, "mail").get(0).message();
		assertThat(second).isNotEqualTo(first);
		this.table.reap(UNTIL.plusMillis(1));
		UUID third = this.table.claim(DUE, UNTIL, UUID.randomUUID(), ONE, "mail").get(0).message();
		assertThat(third).isNotEqualTo(second);
	}

	@Test
	void aMessageThatWasWrittenStays() {
		UUID row = pending(ADA, "one");
		UUID mail = MessageTableTests.save(this.database, ADA, "mail", DUE);
		this.database.sql("update reminders.reminder set message_id = ?").param(mail).update();
		claim(DUE);
		this.table.retry(TOKEN, row, DUE, "451");
		assertThat(this.table.claim(DUE, UNTIL, TOKEN, ONE, "mail")).extracting(Claimed::message).containsExactly(mail);
	}

	@Test
	void takesBackClaimsThatHaveEnded() {
		UUID row = pending(ADA, "one");
		claim(DUE);
		assertThat(this.table.reap(UNTIL)).isEqualTo(new Reaped(0, 0));
		assertThat(this.table.reap(UNTIL.plusMillis(1))).isEqualTo(new Reaped(1, 0));
		assertThat(RowFixture.state(this.database, row)).isEqualTo(ReminderState.PENDING);
		assertThat(this.table.finish(TOKEN, Map.of(row, SENT))).isEmpty();
	}

	@ParameterizedTest
	@EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "CLAIMED")
	void takesBackClaimedRowsOnly(ReminderState state) {
		RowFixture.put(this.database, pending(ADA, "one"), state, UNTIL);
		assertThat(this.table.reap(UNTIL.plus(Duration.ofDays(1)))).isEqualTo(new Reaped(0, 0));
	}

	@Test
	void takesSomePeopleAtOnceEachWithAllTheirRows() {
		pending(ADA, "a1");
		pending(ADA, "a2");
		pending(BEN, "b1");
		assertThat(this.table.claim(DUE, UNTIL, TOKEN, new Bounds(10, 50), "mail")).extracting(Claimed::person)
			.containsExactlyInAnyOrder(ADA, ADA, BEN);
	}

	@Test
	void leavesOtherChannelsAlone() {
		pending(ADA, "one");
		assertThat(this.table.claim(DUE, UNTIL, TOKEN, ONE, "push")).isEmpty();
		assertThat(this.table.claim(DUE, UNTIL, TOKEN, ONE, "mail")).hasSize(1);
	}

	@Test
	void whatWaitsForATimeOfDayWasNoTry() {
		UUID row = pending(ADA, "one");
		claim(DUE);
		Instant morning = DUE.plus(Duration.ofHours(20));
		this.table.postpone(UUID.randomUUID(), Map.of(row, DUE));
		this.table.postpone(TOKEN, Map.of(row, morning));
		assertThat(claim(morning.minusMillis(1))).isEmpty();
		assertThat(this.table.claim(morning, UNTIL, TOKEN, ONE, "mail")).singleElement()
			.extracting(Claimed::attempts)
			.isEqualTo(1);
	}

	/** RFC 1047: nobody can tell whether the other side has it. */
	@Test
	void countsMessagesThatMayHaveLeft() {
		UUID row = pending(ADA, "one");
		UUID mail = MessageTableTests.save(this.database, ADA, "mail", DUE);
		this.database.sql("update reminders.reminder set message_id = ? where id = ?").params(mail, row).update();
		claim(DUE);
		assertThat(this.table.reap(UNTIL.plusMillis(1))).isEqualTo(new Reaped(1, 1));
		assertThat(new MessageTable(this.database).find(mail).orElseThrow().uncertain()).isEqualTo(1);
	}

}
