package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.ReminderState;
import org.leafward.reminders.Topic;
import org.leafward.reminders.core.Known;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The reminder rows as they are sent. A node claims rows under a token that nobody else
 * has and that lasts until a given time; only under that token can it finish them, so a
 * node that comes back late can't undo what another did. Every comparison with time uses
 * the instant that is passed in, never the database's.
 */
@Repository
public class ClaimTable {

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public ClaimTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Takes the due rows of some people through a channel, those whose turn came first.
	 * Only the first due row of a person and channel opens the door to the rest, so that
	 * two nodes don't share out what goes out together between them.
	 * @param now rows due at or before this instant are due
	 * @param until when the claim ends by itself
	 * @param token name of the claim
	 * @param bounds how much to take
	 * @param channel code of the channel
	 * @return empty when nothing is due that isn't being claimed by others
	 */
	public List<Claimed> claim(Instant now, Instant until, UUID token, Bounds bounds, String channel) {
		return this.database.sql("""
				with leader as (
					select r.person_id, r.channel from reminders.reminder r
					where r.state = 'PENDING' and r.claimed_by is null
					and r.next_try_at <= :now and r.channel = :channel
					and r.id = (
						select f.id from reminders.reminder f
						where f.person_id = r.person_id and f.channel = r.channel
						and f.state = 'PENDING' and f.claimed_by is null and f.next_try_at <= :now
						order by f.next_try_at, f.id limit 1)
					order by r.next_try_at, r.id
					limit :people
					for update of r skip locked
				), due as (
					select d.id from leader l cross join lateral (
						select p.id from reminders.reminder p
						where p.person_id = l.person_id and p.channel = l.channel
						and p.state = 'PENDING' and p.claimed_by is null and p.next_try_at <= :now
						order by p.next_try_at, p.id
						limit :most
						for update skip locked) d
				)
				update reminders.reminder t
				set attempts = t.attempts + 1, claimed_by = :token, claimed_until = :until
				from due where t.id = due.id
				returning t.id, t.person_id, t.channel, t.topic, t.task_id, t.first_day, t.dedup_key, t.bundle,
					t.expires_at, t.attempts, t.advisory, t.advisory_number, t.advisory_news,
					reminders.message_of(t.message_id, t.claimed_by, t.person_id, t.channel, t.bundle) as message_id
				""")
			.param("now", Rows.time(now))
			.param("until", Rows.time(until))
			.param("token", token)
			.param("people", bounds.people())
			.param("most", bounds.rows())
			.param("channel", channel)
			.query(ClaimTable::claimed)
			.list();
	}

	/**
	 * How much is taken at once.
	 *
	 * @param people greatest number of people
	 * @param rows greatest number of rows of each
	 */
	public record Bounds(int people, int rows) {
	}

	/**
	 * Which rows are still under a claim.
	 * @param token name of the claim
	 * @param rows the rows
	 * @return those among them at this moment
	 */
	public Set<UUID> held(UUID token, Collection<UUID> rows) {
		return Set.copyOf(this.database.sql("""
				select id from reminders.reminder where id = any(?) and claimed_by = ?
				""").params(rows.toArray(UUID[]::new), token).query(UUID.class).list());
	}

	/**
	 * Ends rows for good.
	 * @param token name of the claim
	 * @param ends how each ends, and why where something went wrong
	 * @return the rows that were still under the claim
	 */
	public Set<UUID> finish(UUID token, Map<UUID, End> ends) {
		if (ends.isEmpty()) {
			return Set.of();
		}
		return Set.copyOf(this.database.sql("""
				update reminders.reminder r
				set state = e.state, last_error = e.error, claimed_by = null, claimed_until = null,
					message_id = reminders.message_of(r.message_id, r.claimed_by, r.person_id, r.channel, r.bundle)
				from unnest(:rows::uuid[], :states::text[], :errors::text[]) as e(row, state, error)
				where r.id = e.row and r.claimed_by = :token
				returning r.id
				""")
			.param("rows", ends.keySet().toArray(UUID[]::new))
			.param("states", ends.values().stream().map((end) -> end.state().name()).toArray(String[]::new))
			.param("errors", ends.values().stream().map(End::error).toArray(String[]::new))
			.param("token", token)
			.query(UUID.class)
			.list());
	}

	/**
	 * How a row ends.
	 *
	 * @param state its last state
	 * @param error why, where something went wrong
	 */
	public record End(ReminderState state, @Nullable String error) {

		/**
		 * Without trouble.
		 * @param state its last state
		 * @return without a reason
		 */
		public static End of(ReminderState state) {
			return new End(state, null);
		}

	}

	/**
	 * Puts rows back that wait for a time of day; that was no try.
	 * @param token name of the claim
	 * @param times when each is due
	 */
	public void postpone(UUID token, Map<UUID, Instant> times) {
		if (!times.isEmpty()) {
			this.database.sql("""
					update reminders.reminder r
					set next_try_at = t.at, attempts = r.attempts - 1, claimed_by = null, claimed_until = null,
						message_id = (select m.id from reminders.message m where m.id
							= reminders.message_of(r.message_id, r.claimed_by, r.person_id, r.channel, r.bundle))
					from unnest(:rows::uuid[], :times::timestamptz[]) as t(row, at)
					where r.id = t.row and r.claimed_by = :token
					""")
				.param("rows", times.keySet().toArray(UUID[]::new))
				// The driver takes no arrays of times.
				.param("times", times.values().stream().map(Instant::toString).toArray(String[]::new))
				.param("token", token)
				.update();
		}
	}

	/**
	 * Puts a row back for another try.
	 * @param token name of the claim
	 * @param id the row
	 * @param nextTry when
	 * @param error why this try failed
	 * @return how many rows, 0 or 1, were still under the claim
	 */
	public int retry(UUID token, UUID id, Instant nextTry, String error) {
		return this.database.sql("""
				update reminders.reminder r
				set next_try_at = :next, last_error = :error, claimed_by = null, claimed_until = null,
					message_id = (select m.id from reminders.message m where m.id
						= reminders.message_of(r.message_id, r.claimed_by, r.person_id, r.channel, r.bundle))
				where id = :id and claimed_by = :token
				""")
			.param("next", Rows.time(nextTry))
			.param("error", error)
			.param("id", id)
			.param("token", token)
			.update();
	}

	/**
	 * Puts rows back whose claim ended by itself, because the node that had it died. What
	 * became of their messages nobody knows: they may have left, and are sent again under
	 * the same Message-ID.
	 * @param now claims until before this instant have ended
	 * @return how many
	 */
	public Reaped reap(Instant now) {
		return this.database.sql("""
				with back as (
					update reminders.reminder r
					set claimed_by = null, claimed_until = null,
						message_id = (select m.id from reminders.message m where m.id
							= reminders.message_of(r.message_id, r.claimed_by, r.person_id, r.channel, r.bundle))
					where state = 'PENDING' and claimed_until < :now
					returning message_id
				), unsure as (
					update reminders.message set uncertain = uncertain + 1
					where state = 'WAITING' and id in (select message_id from back where message_id is not null)
					returning id
				)
				select (select count(*) from back) as rows, (select count(*) from unsure) as messages
				""")
			.param("now", Rows.time(now))
			.query((row, number) -> new Reaped(row.getInt("rows"), row.getInt("messages")))
			.single();
	}

	/**
	 * What dead nodes left.
	 *
	 * @param rows reminders put back
	 * @param messages messages among them that were written and may have left
	 */
	public record Reaped(int rows, int messages) {
	}

	private static Claimed claimed(ResultSet row, int number) throws SQLException {
		UUID task = row.getObject("task_id", UUID.class);
		return new Claimed(row.getObject("id", UUID.class), new PersonId(row.getObject("person_id", UUID.class)),
				row.getString("channel"), Topic.of(row.getString("topic")), (task != null) ? new TaskId(task) : null,
				Rows.day(row), row.getString("dedup_key").contains(Known.LATER), row.getString("bundle"),
				Rows.time(row, "expires_at"), row.getInt("attempts"), row.getObject("message_id", UUID.class),
				OfAdvisory.of(row));
	}

}
