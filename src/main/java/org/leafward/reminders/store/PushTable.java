package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.PushKeys;
import org.leafward.reminders.PushSubscription;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The browsers that take messages. */
@Repository
public class PushTable {

	/** A browser to which nothing gets through for so long, and so often, is given up. */
	private static final Duration PATIENCE = Duration.ofDays(30);

	private static final int MOST_FAILURES = 20;

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public PushTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Adds a browser. One that is known gets the new person, keys and label and keeps its
	 * identifier: whoever signed in there last gets the messages. Beyond
	 * {@value PushSubscription#MOST} the ones that were not used for longest go.
	 * @param one the browser
	 */
	public void save(PushSubscription one) {
		this.database.sql("""
				insert into reminders.push_subscription as known
				(id, person_id, endpoint, p256dh, auth, label, created_at)
				values (:id, :person, :endpoint, :p256dh, :auth, :label, :at)
				on conflict (endpoint) do update
				set person_id = excluded.person_id, p256dh = excluded.p256dh, auth = excluded.auth,
					label = excluded.label, created_at = excluded.created_at, failures = 0,
					last_ok_at = case when known.person_id = excluded.person_id then known.last_ok_at end
				""")
			.param("id", one.id())
			.param("person", one.person().value())
			.param("endpoint", one.endpoint())
			.param("p256dh", one.keys().p256dh())
			.param("auth", one.keys().auth())
			.param("label", one.label())
			.param("at", Rows.time(one.createdAt()))
			.update();
		trim(one.person());
	}

	private void trim(PersonId person) {
		this.database.sql("""
				delete from reminders.push_subscription where id in (
					select id from reminders.push_subscription where person_id = :person
					order by greatest(created_at, last_ok_at) desc, id offset :most)
				""").param("person", person.value()).param("most", PushSubscription.MOST).update();
	}

	/**
	 * The browsers of a person.
	 * @param person whose
	 * @return oldest first, at most {@value PushSubscription#MOST}
	 */
	public List<PushSubscription> of(PersonId person) {
		return this.database
			.sql("select * from reminders.push_subscription where person_id = ? order by created_at, id")
			.param(person.value())
			.query(PushTable::subscription)
			.list();
	}

	/**
	 * What people call their browsers.
	 * @param people who
	 * @return labels, the oldest browser's first; without those who have none
	 */
	public Map<PersonId, String> labels(Collection<PersonId> people) {
		Map<PersonId, String> labels = new LinkedHashMap<>();
		if (!people.isEmpty()) {
			this.database.sql("""
					select person_id, string_agg(label, ', ' order by created_at, id) as labels
					from reminders.push_subscription where person_id = any (:people) group by person_id
					""").param("people", people.stream().map(PersonId::value).toArray(UUID[]::new)).query((row) -> {
				labels.put(new PersonId(row.getObject("person_id", UUID.class)), row.getString("labels"));
			});
		}
		return labels;
	}

	/**
	 * Takes a browser out.
	 * @param person whose it must be
	 * @param id the browser
	 * @return whether it was there
	 */
	public boolean remove(PersonId person, UUID id) {
		return this.database.sql("delete from reminders.push_subscription where id = ? and person_id = ?")
			.params(id, person.value())
			.update() > 0;
	}

	/**
	 * Notes that a push service took something.
	 * @param id the browser
	 * @param at when
	 */
	public void taken(UUID id, Instant at) {
		this.database.sql("update reminders.push_subscription set last_ok_at = ?, failures = 0 where id = ?")
			.params(Rows.time(at), id)
			.update();
	}

	/**
	 * Notes that nothing could be handed on. After {@value #MOST_FAILURES} failures in a
	 * row over more than 30 days the browser is taken out.
	 * @param id the browser
	 * @param at when
	 */
	public void failed(UUID id, Instant at) {
		this.database.sql("update reminders.push_subscription set failures = failures + 1 where id = ?")
			.param(id)
			.update();
		this.database.sql("""
				delete from reminders.push_subscription
				where id = ? and failures >= ? and greatest(created_at, last_ok_at) < ?
				""").params(id, MOST_FAILURES, Rows.time(at.minus(PATIENCE))).update();
	}

	/**
	 * Takes all browsers of a person out.
	 * @param person whose
	 */
	public void forget(PersonId person) {
		this.database.sql("delete from reminders.push_subscription where person_id = ?").param(person.value()).update();
	}

	/**
	 * Gives the browsers of one person to another, within the same bound.
	 * @param from who has them
	 * @param into who gets them
	 */
	public void handOver(PersonId from, PersonId into) {
		this.database.sql("update reminders.push_subscription set person_id = ? where person_id = ?")
			.params(into.value(), from.value())
			.update();
		trim(into);
	}

	private static PushSubscription subscription(ResultSet row, int number) throws SQLException {
		return new PushSubscription(row.getObject("id", UUID.class),
				new PersonId(row.getObject("person_id", UUID.class)), row.getString("endpoint"),
				new PushKeys(row.getBytes("p256dh"), row.getBytes("auth")), row.getString("label"),
				Rows.time(row, "created_at"), Rows.timeOrNull(row, "last_ok_at"), row.getInt("failures"));
	}

}
