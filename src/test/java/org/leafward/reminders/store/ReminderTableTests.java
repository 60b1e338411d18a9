package org.leafward.reminders.store;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.accounts.PersonId;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.Reminder;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.RowFixture;
import org.leafward.reminders.TaskFixture;
import org.leafward.reminders.core.Changes;
import org.leafward.reminders.core.Known;
import org.leafward.support.TestDatabase;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.reminders.RowFixture.wanted;
import static org.leafward.reminders.TaskFixture.ADA;

class ReminderTableTests {

	private static final LocalDate DAY = LocalDate.parse("2026-11-12");

	private static final Instant DUE = Instant.parse("2026-11-12T06:00:00Z");

	private static final PersonId BEN = new PersonId(TaskFixture.id("ben"));

	private static HikariDataSource source;

	private JdbcClient database;

	private ReminderTable table;

	@BeforeAll
	static void aDatabase() {
		source = TestDatabase.fresh();
	}

	@BeforeEach
	void empty() {
		this.database = JdbcClient.create(source);
		this.database.sql("truncate reminders.reminder, reminders.message").update();
		this.table = new ReminderTable(this.database);
	}

	@AfterAll
	static void close() {
		source.close();
	}

	private List<Known> known(PersonId person, DayWindow days) {
		return this.table.known(List.of(person), days).getOrDefault(person, List.of());
	}

	private void apply(Changes changes) {
		this.table.apply(Map.of(ADA, changes), DUE);
	}

	private static Set<ReminderState> movable() {
		return Set.of(ReminderState.PENDING, ReminderState.WITHDRAWN);
	}

	@Test
	void addsARowOnce() {
		UUID row = RowFixture.pending(this.database, ADA, "one", DAY);
		assertThat(RowFixture.pending(this.database, ADA, "one", DAY)).isEqualTo(row);
		assertThat(this.table.known(List.of(ADA), DayWindow.of(DAY)).get(ADA))
			.containsExactly(new Known(row, TaskFixture.id("one"), "mail:" + TaskFixture.id("one") + "@2026-11-12",
					"morning:2026-11-12", DAY, DUE, ReminderState.PENDING));
	}

	@ParameterizedTest
	@EnumSource(ReminderState.class)
	void movesPendingAndWithdrawnRowsOnly(ReminderState state) {
		UUID row = RowFixture.pending(this.database, ADA, "one", DAY);
		RowFixture.put(this.database, row, state, DUE);
		LocalDate later = DAY.plusDays(6);
		apply(new Changes(List.of(), Map.of(row, wanted("one", later)), List.of(), List.of()));
		Known known = known(ADA, new DayWindow(DAY, later)).get(0);
		assertThat(known.state()).isEqualTo(movable().contains(state) ? ReminderState.PENDING : state);
		assertThat(known.firstDay()).isEqualTo(movable().contains(state) ? later : DAY);
	}

	@ParameterizedTest
	@EnumSource(ReminderState.class)
	void endsPendingRowsOnly(ReminderState state) {
		UUID gone = RowFixture.pending(this.database, ADA, "gone", DAY);
		UUID late = RowFixture.pending(this.database, ADA, "late", DAY);
		RowFixture.put(this.database, gone, state, DUE);
		RowFixture.put(this.database, late, state, DUE);
		apply(new Changes(List.of(), Map.of(), List.of(gone), List.of(late)));
		boolean pending = state == ReminderState.PENDING;
		assertThat(RowFixture.state(this.database, gone)).isEqualTo(pending ? ReminderState.WITHDRAWN : state);
		assertThat(RowFixture.state(this.database, late)).isEqualTo(pending ? ReminderState.EXPIRED : state);
	}

	@ParameterizedTest
	@EnumSource(ReminderState.class)
	void knowsOpenRowsOfAnyDayAndOthersNearby(ReminderState state) {
		UUID row = RowFixture.pending(this.database, ADA, "one", DAY);
		RowFixture.put(this.database, row, state, DUE);
		boolean open = Set.of(ReminderState.PENDING, ReminderState.CLAIMED).contains(state);
		assertThat(known(ADA, new DayWindow(DAY.plusDays(1), DAY.plusDays(2)))).hasSize(open ? 1 : 0);
		assertThat(known(ADA, new DayWindow(DAY, DAY.plusDays(2)))).hasSize(1);
		assertThat(known(BEN, new DayWindow(DAY, DAY.plusDays(2)))).isEmpty();
	}

	@ParameterizedTest
	@EnumSource(ReminderState.class)
	void upcomingAreOpenRows(ReminderState state) {
		UUID row = RowFixture.pending(this.database, ADA, "one", DAY);
		RowFixture.put(this.database, row, state, DUE);
		boolean open = Set.of(ReminderState.PENDING, ReminderState.CLAIMED).contains(state);
		assertThat(this.table.upcoming(ADA, 10)).hasSize(open ? 1 : 0);
		assertThat(this.table.upcoming(BEN, 10)).isEmpty();
	}

	@Test
	void upcomingAreSoonestFirst() {
		RowFixture.pending(this.database, ADA, "later", DAY.plusDays(2));
		RowFixture.pending(this.database, ADA, "last", DAY.plusDays(3));
		RowFixture.pending(this.database, ADA, "first", DAY);
		assertThat(this.table.upcoming(ADA, 2)).extracting(Reminder::firstDay).containsExactly(DAY, DAY.plusDays(2));
	}

}
