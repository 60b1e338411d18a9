package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.Reminder;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.core.Changes;
import org.leafward.reminders.core.Known;
import org.leafward.reminders.core.Wanted;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The reminder rows as the plan fills them. Sending them is {@link ClaimTable}'s part.
 * Every comparison with time uses the instant that is passed in, never the database's.
 */
@Repository
public class ReminderTable {

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public ReminderTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Waits until nobody else changes what is planned for a person, to the end of the
	 * transaction.
	 * @param person whose rows
	 */
	public void lock(PersonId person) {
		this.database.sql("select 1 from (select pg_advisory_xact_lock(hashtextextended(?, 0))) as locked")
			.param("reminders " + person)
			.query(Integer.class)
			.single();
	}

	/**
	 * What is on record for a person.
	 * @param person whose rows
	 * @param firstDays first days to look at; rows still to be sent are found whatever
	 * their day
	 * @return in no order
	 */
	public List<Known> known(PersonId person, DayWindow firstDays) {
		return this.database.sql("""
				select id, task_id, first_day, due_at, state from reminders.reminder
				where person_id = :person
				and (state in ('PENDING', 'CLAIMED') or first_day between :from and :to)
				""")
			.param("person", person.value())
			.param("from", firstDays.from())
			.param("to", firstDays.to())
			.query((row, number) -> new Known(row.getObject("id", UUID.class),
					new TaskId(row.getObject("task_id", UUID.class)), Rows.day(row), Rows.time(row, "due_at"),
					ReminderState.valueOf(row.getString("state"))))
			.list();
	}

	/**
	 * Brings the rows of a person in line with the plan. Rows that a node has claimed
	 * meanwhile stay as they are.
	 * @param person whose rows
	 * @param changes what to do
	 */
	public void apply(PersonId person, Changes changes) {
		changes.add().forEach((wanted) -> add(person, wanted));
		end(changes.withdraw(), ReminderState.WITHDRAWN);
		end(changes.expire(), ReminderState.EXPIRED);
		changes.set().forEach(this::set);
	}

	/**
	 * Reminders still to be sent.
	 * @param person who gets them
	 * @param limit how many at most
	 * @return soonest first
	 */
	public List<Reminder> upcoming(PersonId person, int limit) {
		return this.database.sql("""
				select id, person_id, task_id, first_day, due_at, state from reminders.reminder
				where person_id = :person and state in ('PENDING', 'CLAIMED')
				order by due_at, id limit :limit
				""").param("person", person.value()).param("limit", limit).query(ReminderTable::reminder).list();
	}

	private void add(PersonId person, Wanted wanted) {
		this.database.sql("""
				insert into reminders.reminder
				(id, person_id, task_id, first_day, dedup_key, due_at, expires_at, state, next_try_at)
				values (:id, :person, :task, :day, :key, :due, :expires, 'PENDING', :due)
				on conflict (dedup_key) do nothing
				""")
			.param("id", UUID.randomUUID())
			.param("person", person.value())
			.param("task", wanted.task().value())
			.param("day", wanted.firstDay())
			.param("key", wanted.dedupKey())
			.param("due", Rows.time(wanted.dueAt()))
			.param("expires", Rows.time(wanted.expiresAt()))
			.update();
	}

	/** A moved reminder starts anew: other day, other mail. */
	private void set(UUID id, Wanted wanted) {
		this.database.sql("""
				update reminders.reminder
				set state = 'PENDING', first_day = :day, dedup_key = :key, due_at = :due, expires_at = :expires,
					next_try_at = :due, attempts = 0, mail_id = null, last_error = null
				where id = :id and state in ('PENDING', 'WITHDRAWN')
				""")
			.param("id", id)
			.param("day", wanted.firstDay())
			.param("key", wanted.dedupKey())
			.param("due", Rows.time(wanted.dueAt()))
			.param("expires", Rows.time(wanted.expiresAt()))
			.update();
	}

	private void end(Collection<UUID> ids, ReminderState state) {
		if (!ids.isEmpty()) {
			this.database.sql("update reminders.reminder set state = :state where id in (:ids) and state = 'PENDING'")
				.param("state", state.name())
				.param("ids", ids)
				.update();
		}
	}

	private static Reminder reminder(ResultSet row, int number) throws SQLException {
		return new Reminder(row.getObject("id", UUID.class), new PersonId(row.getObject("person_id", UUID.class)),
				new TaskId(row.getObject("task_id", UUID.class)), Rows.day(row), Rows.time(row, "due_at"),
				ReminderState.valueOf(row.getString("state")));
	}

}
