package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.Reminder;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.core.Changes;
import org.leafward.reminders.core.DueTimes;
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
	 * Waits until nobody else changes what is planned for some people, to the end of the
	 * transaction. Always in one order, so that two nodes don't wait for each other.
	 * @param people whose rows
	 */
	public void lock(Collection<PersonId> people) {
		this.database
			.sql("""
					select count(pg_advisory_xact_lock(k)) from (
						select hashtextextended('reminders ' || p, 0) as k from unnest(:people::text[]) as p order by k) keys
					""")
			.param("people", people.stream().map(PersonId::toString).toArray(String[]::new))
			.query(Long.class)
			.single();
	}

	/**
	 * What is on record for people.
	 * @param people whose rows
	 * @param firstDays first days to look at; rows still to be sent are found whatever
	 * their day
	 * @return by person, in no order
	 */
	public Map<PersonId, List<Known>> known(Collection<PersonId> people, DayWindow firstDays) {
		Map<PersonId, List<Known>> all = new HashMap<>();
		this.database.sql("""
				select id, person_id, task_id, dedup_key, bundle, first_day, due_at,
					case when claimed_by is not null then 'CLAIMED' else state end as state
				from reminders.reminder
				where person_id = any(:people)
				and (state = 'PENDING' or first_day between :from and :to)
				""")
			.param("people", people.stream().map(PersonId::value).toArray(UUID[]::new))
			.param("from", firstDays.from())
			.param("to", firstDays.to())
			.query((row) -> {
				PersonId person = new PersonId(row.getObject("person_id", UUID.class));
				all.computeIfAbsent(person, (key) -> new ArrayList<>()).add(known(row));
			});
		return all;
	}

	/**
	 * Brings the rows of people in line with the plan. Rows that a node has claimed
	 * meanwhile stay as they are.
	 * @param changes what to do, by person
	 * @param now what is due before is due now
	 */
	public void apply(Map<PersonId, Changes> changes, Instant now) {
		add(changes, now);
		end(changes.values().stream().flatMap((each) -> each.withdraw().stream()).toList(), ReminderState.WITHDRAWN);
		end(changes.values().stream().flatMap((each) -> each.expire().stream()).toList(), ReminderState.EXPIRED);
		changes.forEach((person, each) -> each.set().forEach((row, wanted) -> set(person, row, wanted, now)));
	}

	/**
	 * Reminders still to be sent.
	 * @param person who gets them
	 * @param limit how many at most
	 * @return soonest first
	 */
	public List<Reminder> upcoming(PersonId person, int limit) {
		return this.database.sql("""
				select id, person_id, channel, topic, task_id, first_day, due_at,
					case when claimed_by is not null then 'CLAIMED' else state end as state
				from reminders.reminder
				where person_id = :person and state = 'PENDING'
				order by due_at, id limit :limit
				""").param("person", person.value()).param("limit", limit).query(ReminderTable::reminder).list();
	}

	private void add(Map<PersonId, Changes> changes, Instant now) {
		Columns rows = new Columns();
		changes.forEach((person, each) -> each.add()
			.forEach((wanted) -> rows.add(UUID.randomUUID(), person.value(), wanted.channel(), wanted.topic().code(),
					wanted.bundle(), task(wanted), wanted.firstDay(), wanted.dedupKey(), Rows.time(wanted.dueAt()),
					Rows.time(wanted.expiresAt()), Rows.time(firstTry(person, wanted, now)))));
		if (!rows.isEmpty()) {
			this.database
				.sql("""
						insert into reminders.reminder
						(id, person_id, channel, topic, bundle, task_id, first_day, dedup_key, due_at, expires_at, next_try_at,
							state)
						select *, 'PENDING' from unnest(?::uuid[], ?::uuid[], ?::text[], ?::text[], ?::text[], ?::uuid[],
							?::date[], ?::text[], ?::timestamptz[], ?::timestamptz[], ?::timestamptz[])
						on conflict (dedup_key) do nothing
						""")
				.params(rows.arrays())
				.update();
		}
	}

	private static @Nullable UUID task(Wanted wanted) {
		TaskId task = wanted.task();
		return (task != null) ? task.value() : null;
	}

	/**
	 * Mornings are spread over some minutes, or a mail server would get everybody's
	 * messages at once.
	 */
	private static Instant firstTry(PersonId person, Wanted wanted, Instant now) {
		long spread = Math.floorMod(person.value().getMostSignificantBits(), DueTimes.SPREAD.toSeconds());
		if (wanted.dueAt().equals(now)) {
			// It came up too late for the morning, so it leaves on its own.
			return now;
		}
		Instant turn = wanted.bundle().startsWith(Series.MORNING.code()) ? wanted.dueAt().plusSeconds(spread)
				: wanted.dueAt();
		return turn.isAfter(now) ? turn : now;
	}

	/** A moved reminder starts anew: other day, other message. */
	private void set(PersonId person, UUID id, Wanted wanted, Instant now) {
		this.database.sql("""
				update reminders.reminder
				set state = 'PENDING', topic = :topic, bundle = :bundle, first_day = :day, dedup_key = :key,
					due_at = :due, expires_at = :expires, next_try_at = :try, attempts = 0, message_id = null,
					last_error = null
				where id = :id and state in ('PENDING', 'WITHDRAWN') and claimed_by is null
				""")
			.param("id", id)
			.param("topic", wanted.topic().code())
			.param("bundle", wanted.bundle())
			.param("day", wanted.firstDay())
			.param("key", wanted.dedupKey())
			.param("due", Rows.time(wanted.dueAt()))
			.param("expires", Rows.time(wanted.expiresAt()))
			.param("try", Rows.time(firstTry(person, wanted, now)))
			.update();
	}

	private static Known known(ResultSet row) throws SQLException {
		return new Known(row.getObject("id", UUID.class), row.getObject("task_id", UUID.class),
				row.getString("dedup_key"), row.getString("bundle"), Rows.day(row), Rows.time(row, "due_at"),
				ReminderState.valueOf(row.getString("state")));
	}

	private void end(Collection<UUID> ids, ReminderState state) {
		if (!ids.isEmpty()) {
			this.database
				.sql("update reminders.reminder set state = :state where id in (:ids) "
						+ "and state = 'PENDING' and claimed_by is null")
				.param("state", state.name())
				.param("ids", ids)
				.update();
		}
	}

	private static Reminder reminder(ResultSet row, int number) throws SQLException {
		UUID task = row.getObject("task_id", UUID.class);
		return new Reminder(row.getObject("id", UUID.class), new PersonId(row.getObject("person_id", UUID.class)),
				row.getString("channel"), Topic.of(row.getString("topic")), (task != null) ? new TaskId(task) : null,
				Rows.day(row), Rows.time(row, "due_at"), ReminderState.valueOf(row.getString("state")));
	}

}
