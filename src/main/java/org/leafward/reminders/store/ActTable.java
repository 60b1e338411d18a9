package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.core.Later;
import org.leafward.reminders.core.Told;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The reminder rows as those see them who act on a message. */
@Repository
public class ActTable {

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public ActTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * A reminder of a task.
	 * @param id its row
	 * @return empty when there is none, or it is of no task
	 */
	public Optional<Told> find(UUID id) {
		return this.database.sql("""
				select r.id, r.person_id, r.task_id, r.channel, r.topic, r.first_day, m.id as message_id, m.series
				from reminders.reminder r left join reminders.message m
					on m.id = reminders.message_of(r.message_id, r.claimed_by, r.person_id, r.channel, r.bundle)
				where r.id = ? and r.task_id is not null
				""").param(id).query(ActTable::told).optional();
	}

	/**
	 * The tasks that the same message told, of those with the same topic and first day.
	 * @param told one of them
	 * @param limit how many at most
	 * @return that one first; alone when it waits for another message
	 */
	public List<TaskId> besides(Told told, int limit) {
		UUID message = told.message();
		if (message == null) {
			return List.of(told.task());
		}
		return this.database.sql("""
				select task_id from reminders.reminder r
				where reminders.message_of(r.message_id, r.claimed_by, r.person_id, r.channel, r.bundle) = :message
				and person_id = :person and topic = :topic and first_day = :day
				and task_id is not null
				group by task_id order by task_id <> :task, task_id limit :limit
				""")
			.param("message", message)
			.param("person", told.person().value())
			.param("topic", told.topic().code())
			.param("day", told.firstDay())
			.param("task", told.task().value())
			.param("limit", limit)
			.query(UUID.class)
			.list()
			.stream()
			.map(TaskId::new)
			.toList();
	}

	/**
	 * Adds a reminder that somebody asked to have again, in place of another that waits.
	 * @param person who gets it
	 * @param later the reminder
	 */
	public void add(PersonId person, Later later) {
		this.database.sql("""
				update reminders.reminder set state = 'WITHDRAWN'
				where person_id = :person and task_id = :task and state = 'PENDING' and claimed_by is null
				and dedup_key like :line and dedup_key <> :key
				""")
			.param("person", person.value())
			.param("task", later.task().value())
			.param("line", Later.line(later.channel(), later.task()) + "@%")
			.param("key", later.dedupKey())
			.update();
		this.database.sql("""
				insert into reminders.reminder as known
				(id, person_id, task_id, channel, topic, bundle, first_day, dedup_key, due_at, expires_at, state,
					next_try_at)
				values (:id, :person, :task, :channel, :topic, :bundle, :day, :key, :due, :expires, 'PENDING', :due)
				on conflict (dedup_key) do update
				set state = 'PENDING', bundle = excluded.bundle, due_at = excluded.due_at,
					expires_at = excluded.expires_at, next_try_at = excluded.next_try_at, attempts = 0,
					message_id = null, last_error = null
				where known.state = 'WITHDRAWN'
				""")
			.param("id", UUID.randomUUID())
			.param("person", person.value())
			.param("task", later.task().value())
			.param("channel", later.channel())
			.param("topic", later.topic().code())
			.param("bundle", later.bundle())
			.param("day", later.day())
			.param("key", later.dedupKey())
			.param("due", Rows.time(later.dueAt()))
			.param("expires", Rows.time(later.expiresAt()))
			.update();
	}

	/**
	 * The day on which somebody is told again.
	 * @param person who
	 * @param channel code of the channel
	 * @param tasks of which tasks, at least one
	 * @return empty when none of them waits to be told again
	 */
	public Optional<LocalDate> laterDay(PersonId person, String channel, Collection<TaskId> tasks) {
		return this.database.sql("""
				select min(first_day) from reminders.reminder
				where person_id = :person and channel = :channel and task_id in (:tasks) and state = 'PENDING'
				and dedup_key like '%:later:%'
				having min(first_day) is not null
				""")
			.param("person", person.value())
			.param("channel", channel)
			.param("tasks", ids(tasks))
			.query(LocalDate.class)
			.optional();
	}

	/**
	 * Withdraws what somebody asked to be told again.
	 * @param person who
	 * @param channel code of the channel
	 * @param tasks of which tasks, at least one
	 */
	public void withdrawLaters(PersonId person, String channel, Collection<TaskId> tasks) {
		this.database.sql("""
				update reminders.reminder set state = 'WITHDRAWN'
				where person_id = :person and channel = :channel and task_id in (:tasks) and state = 'PENDING'
				and claimed_by is null and dedup_key like '%:later:%'
				""").param("person", person.value()).param("channel", channel).param("tasks", ids(tasks)).update();
	}

	/**
	 * Withdraws all that somebody asked to be told again.
	 * @param person who
	 * @param channel code of the channel
	 */
	public void withdrawLaters(PersonId person, String channel) {
		this.database.sql("""
				update reminders.reminder set state = 'WITHDRAWN'
				where person_id = :person and channel = :channel and state = 'PENDING' and claimed_by is null
				and dedup_key like '%:later:%'
				""").param("person", person.value()).param("channel", channel).update();
	}

	private static List<UUID> ids(Collection<TaskId> tasks) {
		return tasks.stream().map(TaskId::value).toList();
	}

	private static Told told(ResultSet row, int number) throws SQLException {
		String series = row.getString("series");
		return new Told(row.getObject("id", UUID.class), new PersonId(row.getObject("person_id", UUID.class)),
				new TaskId(row.getObject("task_id", UUID.class)), row.getString("channel"),
				Topic.of(row.getString("topic")), Rows.day(row), row.getObject("message_id", UUID.class),
				(series != null) ? Series.of(series) : null);
	}

}
