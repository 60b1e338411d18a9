package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.ReminderState;
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
	 * Takes the due rows of one person, the one whose turn came first. Only the first due
	 * row of a person opens the door to the rest, so that two nodes don't share out one
	 * person's rows between them.
	 * @param now rows due at or before this instant are due
	 * @param until when the claim ends by itself
	 * @param token name of the claim
	 * @param most greatest number of rows
	 * @return empty when nothing is due that isn't being claimed by others
	 */
	public List<Claimed> claim(Instant now, Instant until, UUID token, int most) {
		return this.database.sql("""
				with leader as (
					select r.person_id from reminders.reminder r
					where r.state = 'PENDING' and r.next_try_at <= :now
					and r.id = (
						select f.id from reminders.reminder f
						where f.person_id = r.person_id and f.state = 'PENDING' and f.next_try_at <= :now
						order by f.next_try_at, f.id limit 1)
					order by r.next_try_at, r.id
					limit 1
					for update of r skip locked
				), due as (
					select d.id from reminders.reminder d
					where d.person_id = (select person_id from leader)
					and d.state = 'PENDING' and d.next_try_at <= :now
					order by d.next_try_at, d.id
					limit :most
					for update skip locked
				)
				update reminders.reminder t
				set state = 'CLAIMED', attempts = t.attempts + 1, claimed_by = :token, claimed_until = :until
				from due where t.id = due.id
				returning t.id, t.person_id, t.task_id, t.first_day, t.expires_at, t.attempts, t.mail_id
				""")
			.param("now", Rows.time(now))
			.param("until", Rows.time(until))
			.param("token", token)
			.param("most", most)
			.query(ClaimTable::claimed)
			.list();
	}

	/**
	 * Writes the mail on its rows.
	 * @param token name of the claim
	 * @param ids the rows
	 * @param mail the mail
	 * @return how many of the rows are still under the claim
	 */
	public int attach(UUID token, Collection<UUID> ids, UUID mail) {
		return this.database.sql("""
				update reminders.reminder set mail_id = :mail
				where id in (:ids) and state = 'CLAIMED' and claimed_by = :token
				""").param("mail", mail).param("ids", ids).param("token", token).update();
	}

	/**
	 * Ends rows for good.
	 * @param token name of the claim
	 * @param ids the rows
	 * @param state how they end
	 * @param error why, where something went wrong
	 * @return how many of the rows were still under the claim
	 */
	public int finish(UUID token, Collection<UUID> ids, ReminderState state, @Nullable String error) {
		if (ids.isEmpty()) {
			return 0;
		}
		return this.database.sql("""
				update reminders.reminder
				set state = :state, last_error = :error, claimed_by = null, claimed_until = null
				where id in (:ids) and state = 'CLAIMED' and claimed_by = :token
				""")
			.param("state", state.name())
			.param("error", error)
			.param("ids", ids)
			.param("token", token)
			.update();
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
				update reminders.reminder
				set state = 'PENDING', next_try_at = :next, last_error = :error,
					claimed_by = null, claimed_until = null
				where id = :id and state = 'CLAIMED' and claimed_by = :token
				""")
			.param("next", Rows.time(nextTry))
			.param("error", error)
			.param("id", id)
			.param("token", token)
			.update();
	}

	/**
	 * Puts rows back whose claim ended by itself, because the node that had it died.
	 * @param now claims until before this instant have ended
	 * @return how many rows
	 */
	public int reap(Instant now) {
		return this.database.sql("""
				update reminders.reminder set state = 'PENDING', claimed_by = null, claimed_until = null
				where state = 'CLAIMED' and claimed_until < :now
				""").param("now", Rows.time(now)).update();
	}

	private static Claimed claimed(ResultSet row, int number) throws SQLException {
		return new Claimed(row.getObject("id", UUID.class), new PersonId(row.getObject("person_id", UUID.class)),
				new TaskId(row.getObject("task_id", UUID.class)), Rows.day(row), Rows.time(row, "expires_at"),
				row.getInt("attempts"), row.getObject("mail_id", UUID.class));
	}

}
