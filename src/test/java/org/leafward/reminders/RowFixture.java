package org.leafward.reminders;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.core.Changes;
import org.leafward.reminders.core.DueTimes;
import org.leafward.reminders.core.Wanted;
import org.leafward.reminders.store.ReminderTable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reminder rows for tests, made by the table itself. */
public final class RowFixture {

	public static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

	private RowFixture() {
	}

	public static Wanted wanted(String task, LocalDate day) {
		return new Wanted("mail", Topic.TO_DO, TaskFixture.id(task), day, "morning:" + day, DueTimes.dueAt(day, ZONE),
				DueTimes.expiresAt(day, ZONE));
	}

	public static UUID pending(JdbcClient database, PersonId person, String task, LocalDate day) {
		// What is due already isn't spread over the morning.
		new ReminderTable(database).apply(
				Map.of(person, new Changes(List.of(wanted(task, day)), Map.of(), List.of(), List.of())),
				wanted(task, day).dueAt());
		return row(database, task, day);
	}

	public static UUID row(JdbcClient database, String task, LocalDate day) {
		return database.sql("select id from reminders.reminder where dedup_key = ?")
			.param(wanted(task, day).dedupKey())
			.query(UUID.class)
			.single();
	}

	public static ReminderState state(JdbcClient database, UUID row) {
		return database.sql(
				"select case when claimed_by is not null then 'CLAIMED' else state end from reminders.reminder where id = ?")
			.param(row)
			.query(ReminderState.class)
			.single();
	}

	/** Whatever a row needs to be in a state; the mail is left out. */
	public static void put(JdbcClient database, UUID row, ReminderState state, Instant claimedUntil) {
		boolean claimed = state == ReminderState.CLAIMED;
		database.sql("update reminders.reminder set state = ?, claimed_by = ?, claimed_until = ? where id = ?")
			.params(claimed ? "PENDING" : state.name(), claimed ? UUID.randomUUID() : null,
					claimed ? claimedUntil.atOffset(ZoneOffset.UTC) : null, row)
			.update();
	}

}
