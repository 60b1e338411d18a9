package org.leafward.reminders.store;

import java.net.URI;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The webhooks. What came of a call is written only while the address is the one that was
 * called: somebody may have changed it meanwhile.
 */
@Repository
public class WebhookTable {

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public WebhookTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * The webhook of a person, on or off.
	 * @param person whose
	 * @return empty when there is none
	 */
	public Optional<WebhookRow> find(PersonId person) {
		return this.database.sql("select * from reminders.webhook where person_id = ?")
			.param(person.value())
			.query(WebhookTable::webhook)
			.optional();
	}

	/**
	 * Addresses of webhooks that are on.
	 * @param people whose
	 * @return without those who have none
	 */
	public Map<PersonId, URI> enabled(Collection<PersonId> people) {
		Map<PersonId, URI> found = new HashMap<>();
		if (!people.isEmpty()) {
			this.database.sql("select * from reminders.webhook where person_id in (:people) and disabled_at is null")
				.param("people", people.stream().map(PersonId::value).toList())
				.query(WebhookTable::webhook)
				.list()
				.forEach((one) -> found.put(one.person(), one.address()));
		}
		return found;
	}

	/**
	 * Adds a webhook unless the person has one.
	 * @param person whose
	 * @param address where messages go
	 * @param secret what signs
	 * @param now when it is made
	 * @return false when the person has one already
	 */
	public boolean add(PersonId person, URI address, byte[] secret, Instant now) {
		return this.database.sql("""
				insert into reminders.webhook (person_id, address, secret, created_at) values (?, ?, ?, ?)
				on conflict (person_id) do nothing
				""").params(person.value(), address.toString(), secret, Rows.time(now)).update() == 1;
	}

	/**
	 * Changes the address and switches the webhook on.
	 * @param person whose
	 * @param address where messages go from now on
	 */
	public void change(PersonId person, URI address) {
		this.database.sql("""
				update reminders.webhook
				set address = ?, disabled_at = null, disabled_because = null, failing_since = null, failures = 0,
					not_before = null
				where person_id = ?
				""").params(address.toString(), person.value()).update();
	}

	/**
	 * Takes another secret; the one before it goes on signing for a while.
	 * @param person whose
	 * @param secret the new one
	 * @param formerUntil until when the former one signs too
	 * @return false when there is no webhook
	 */
	public boolean renew(PersonId person, byte[] secret, Instant formerUntil) {
		return this.database.sql("""
				update reminders.webhook set former_secret = secret, former_until = ?, secret = ? where person_id = ?
				""").params(Rows.time(formerUntil), secret, person.value()).update() == 1;
	}

	/**
	 * Removes a webhook.
	 * @param person whose
	 * @return false when there was none
	 */
	public boolean remove(PersonId person) {
		return this.database.sql("delete from reminders.webhook where person_id = ?")
			.param(person.value())
			.update() == 1;
	}

	/**
	 * Notes that something was taken, which switches a webhook on that was off.
	 * @param called the webhook as it was called
	 * @param now when
	 * @param outcome in words
	 */
	public void taken(WebhookRow called, Instant now, String outcome) {
		this.database.sql("""
				update reminders.webhook
				set last_ok_at = :now, last_tried_at = :now, last_outcome = :outcome, failing_since = null,
					failures = 0, not_before = null, disabled_at = null, disabled_because = null
				where person_id = :person and address = :address
				""")
			.param("now", Rows.time(now))
			.param("outcome", outcome)
			.param("person", called.person().value())
			.param("address", called.address().toString())
			.update();
	}

	/**
	 * Notes that something was not taken.
	 * @param called the webhook as it was called
	 * @param now when
	 * @param outcome in words
	 * @param notBefore until when its server wants to be left alone; null when it said
	 * nothing
	 */
	public void failed(WebhookRow called, Instant now, String outcome, @Nullable Instant notBefore) {
		this.database.sql("""
				update reminders.webhook
				set last_tried_at = :now, last_outcome = :outcome, failing_since = coalesce(failing_since, :now),
					failures = failures + 1, not_before = :notBefore
				where person_id = :person and address = :address
				""")
			.param("now", Rows.time(now))
			.param("outcome", outcome)
			.param("notBefore", (notBefore != null) ? Rows.time(notBefore) : null)
			.param("person", called.person().value())
			.param("address", called.address().toString())
			.update();
	}

	/**
	 * Switches a webhook off.
	 * @param called the webhook as it was called
	 * @param now when
	 * @param because why, in words
	 * @return false when it is off already
	 */
	public boolean disable(WebhookRow called, Instant now, String because) {
		return this.database.sql("""
				update reminders.webhook set disabled_at = ?, disabled_because = ?
				where person_id = ? and address = ? and disabled_at is null
				""")
			.params(Rows.time(now), because, called.person().value(), called.address().toString())
			.update() == 1;
	}

	/**
	 * Switches a webhook off when it has failed for long.
	 * @param called the webhook as it was called
	 * @param now when
	 * @param since it is off when nothing was taken since then or longer
	 * @param failures and at least so many tries failed
	 * @param because why, in words
	 * @return false when it hasn't, or is off already
	 */
	public boolean disableIfFailing(WebhookRow called, Instant now, Instant since, int failures, String because) {
		return this.database.sql("""
				update reminders.webhook set disabled_at = ?, disabled_because = ?
				where person_id = ? and address = ? and disabled_at is null and failing_since <= ? and failures >= ?
				""")
			.params(Rows.time(now), because, called.person().value(), called.address().toString(), Rows.time(since),
					failures)
			.update() == 1;
	}

	/**
	 * Uses up one trial.
	 * @param person whose
	 * @param now when
	 * @param since trials from before then don't count any more
	 * @param most how many there may be
	 * @return false when all are used up
	 */
	public boolean trial(PersonId person, Instant now, Instant since, int most) {
		return this.database.sql("""
				insert into reminders.webhook_trial as had (person_id, since, trials) values (:person, :now, 1)
				on conflict (person_id) do update
				set since = case when had.since <= :since then :now else had.since end,
					trials = case when had.since <= :since then 1 else had.trials + 1 end
				where had.since <= :since or had.trials < :most
				""")
			.param("person", person.value())
			.param("now", Rows.time(now))
			.param("since", Rows.time(since))
			.param("most", most)
			.update() == 1;
	}

	private static WebhookRow webhook(ResultSet row, int number) throws SQLException {
		return new WebhookRow(new PersonId(row.getObject("person_id", UUID.class)),
				URI.create(row.getString("address")), row.getBytes("secret"), row.getBytes("former_secret"),
				Rows.timeOrNull(row, "former_until"), Rows.time(row, "created_at"), Rows.timeOrNull(row, "disabled_at"),
				row.getString("disabled_because"), Rows.timeOrNull(row, "last_ok_at"),
				Rows.timeOrNull(row, "last_tried_at"), row.getString("last_outcome"),
				Rows.timeOrNull(row, "not_before"));
	}

}
