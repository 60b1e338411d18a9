package org.leafward.reminders.store;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.leafward.reminders.Message;
import org.leafward.reminders.QueueDepth;
import org.leafward.reminders.QueueTrouble;
import org.leafward.reminders.SentHour;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What an operator wants to know of the rows, and what is tidied away. */
@Repository
public class QueueTable {

	private static final int BATCH = 10_000;

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public QueueTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Counts what waits. What was put off for quiet hours or a pause is not late.
	 * @param now the time
	 * @return the numbers
	 */
	public QueueDepth depth(Instant now) {
		return this.database.sql("""
				select count(*) filter (where claimed_by is null and next_try_at <= :now) as due,
					count(*) filter (where claimed_by is not null) as claimed,
					count(*) filter (where claimed_by is null and next_try_at > :now and attempts > 0) as waiting,
					count(*) filter (where claimed_by is null and next_try_at > :now and attempts = 0) as ahead,
					min(case when attempts > 0 then due_at else next_try_at end)
						filter (where next_try_at <= :now or attempts > 0) as oldest
				from reminders.reminder where state = 'PENDING'
				""")
			.param("now", Rows.time(now))
			.query((row, number) -> new QueueDepth(row.getLong("due"), row.getLong("claimed"), row.getLong("waiting"),
					row.getLong("ahead"), Rows.timeOrNull(row, "oldest")))
			.single();
	}

	/**
	 * Messages that left, by hour.
	 * @param since from this instant on
	 * @return the latest hour first; hours without any are left out
	 */
	public List<SentHour> sent(Instant since) {
		return this.database.sql("""
				select date_trunc('hour', sent_at) as hour, count(*) as messages from reminders.message
				where sent_at >= ? group by 1 order by 1 desc
				""")
			.param(Rows.time(since))
			.query((row, number) -> new SentHour(Rows.time(row, "hour"), row.getLong("messages")))
			.list();
	}

	/**
	 * Counts trouble.
	 * @return since messages are kept
	 */
	public QueueTrouble trouble() {
		return this.database.sql("""
				select count(*) filter (where state = 'FAILED') as failed, coalesce(sum(uncertain), 0) as uncertain
				from reminders.message where state = 'FAILED' or uncertain > 0
				""").query((row, number) -> new QueueTrouble(row.getLong("failed"), row.getLong("uncertain"))).single();
	}

	/**
	 * Messages that failed, and those that wait after a failure.
	 * @param skip how many to leave out
	 * @param most how many at most
	 * @return newest first
	 */
	public List<Message> inTrouble(long skip, int most) {
		return this.database.sql("""
				select * from reminders.message
				where state = 'FAILED' or (state = 'WAITING' and server_reply is not null)
				order by created_at desc, id desc limit ? offset ?
				""").params(most, skip).query(MessageTable::message).list();
	}

	/**
	 * Lets a message that failed, or waits, be tried at once.
	 * @param message the message
	 * @param now the time
	 * @return how many reminders are tried again; 0 when all have lost their use
	 */
	public int retry(UUID message, Instant now) {
		int rows = this.database.sql("""
				update reminders.reminder set state = 'PENDING', next_try_at = :now
				where message_id = :message and state in ('PENDING', 'FAILED') and claimed_by is null
				and expires_at > :now
				""").param("message", message).param("now", Rows.time(now)).update();
		if (rows > 0) {
			this.database.sql("update reminders.message set state = 'WAITING' where id = ? and state = 'FAILED'")
				.param(message)
				.update();
		}
		return rows;
	}

	/**
	 * Deletes reminders that ended long ago and messages without any, a batch at a time.
	 * @param now the time
	 * @param keep how long they are kept
	 * @return how many rows of both; 0 when all is tidy
	 */
	public int purge(Instant now, Duration keep) {
		OffsetDateTime before = Rows.time(now.minus(keep));
		// What became of advisories stays known, as numbers.
		int reminders = this.database.sql("""
				with gone as (
					delete from reminders.reminder where id in (
						select id from reminders.reminder
						where state <> 'PENDING' and expires_at < ? limit ?)
					returning advisory, channel, state
				), counted as (
					insert into reminders.advisory_past as p (advisory, channel, sent, failed)
					select advisory, channel, count(*) filter (where state in ('SENT', 'KEPT')),
						count(*) filter (where state in ('FAILED', 'EXPIRED'))
					from gone where advisory is not null group by advisory, channel
					on conflict (advisory, channel) do update
					set sent = p.sent + excluded.sent, failed = p.failed + excluded.failed
				)
				select count(*) from gone
				""").params(before, BATCH).query(Integer.class).single();
		int messages = this.database.sql("""
				delete from reminders.message where id in (
					select m.id from reminders.message m where m.created_at < ? and m.state <> 'WAITING'
					and not exists (select 1 from reminders.reminder r where r.message_id = m.id) limit ?)
				""").params(before, BATCH).update();
		return reminders + messages;
	}

}
