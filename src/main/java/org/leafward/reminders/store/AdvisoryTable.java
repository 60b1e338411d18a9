package org.leafward.reminders.store;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.Deliveries.Delivered;
import org.leafward.reminders.Topic;
import org.leafward.reminders.core.AdvisoryDue;
import org.leafward.reminders.core.AdvisoryDue.Turn;
import org.leafward.reminders.core.AdvisoryNotice.News;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Whom advisories are told to: how far the rows of a message are made, the rows, and what
 * became of them.
 */
@Repository
public class AdvisoryTable {

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public AdvisoryTable(JdbcClient database) {
		this.database = database;
	}

	/** What a message did. */
	public enum Kind {

		/** The first message. */
		ISSUED,

		/** Other words, times or places. */
		UPDATED,

		/** It was called off. */
		CANCELLED

	}

	/** Who is being told. */
	public enum Phase {

		/** Those who were told of an earlier message. */
		TOLD,

		/** Those whom this message concerns. */
		CONCERNED,

		/** All rows are made. */
		DONE

	}

	/**
	 * The making of the rows of a message.
	 *
	 * @param message the message
	 * @param advisory the advisory
	 * @param kind what the message did
	 * @param sentAt when it was sent
	 * @param phase who is being told
	 * @param reached the last person of the page before; null at the beginning of a phase
	 */
	public record Round(UUID message, AdvisoryId advisory, Kind kind, Instant sentAt, Phase phase,
			@Nullable PersonId reached) {
	}

	/**
	 * Notes that the rows of a message are to be made; the second time nothing happens.
	 * @param message the message
	 * @param advisory the advisory
	 * @param kind what the message did
	 * @param sentAt when it was sent
	 * @param now the time
	 */
	public void begin(UUID message, UUID advisory, Kind kind, Instant sentAt, Instant now) {
		this.database.sql("""
				insert into reminders.advisory_round (message, advisory, kind, sent_at, phase, began_at)
				values (?, ?, ?, ?, ?, ?) on conflict (message) do nothing
				""")
			.params(message, advisory, kind.name(), Rows.time(sentAt),
					((kind == Kind.ISSUED) ? Phase.CONCERNED : Phase.TOLD).name(), Rows.time(now))
			.update();
	}

	/**
	 * Takes the oldest message whose rows are not all made, for this transaction; one
	 * that another node has is passed by, and so is one whose forerunner is being told.
	 * @param but messages to pass by
	 * @return empty when there is none
	 */
	public Optional<Round> take(Set<UUID> but) {
		return this.database.sql("""
				select r.message, r.advisory, r.kind, r.sent_at, r.phase, r.reached from reminders.advisory_round r
				where r.ended_at is null and r.message <> all (:but) and not exists (
					select 1 from reminders.advisory_round e
					where e.advisory = r.advisory and e.ended_at is null and e.sent_at < r.sent_at)
				order by r.sent_at, r.message limit 1 for update skip locked
				""").param("but", but.toArray(UUID[]::new)).query(AdvisoryTable::round).optional();
	}

	private static Round round(ResultSet row, int number) throws SQLException {
		UUID reached = row.getObject("reached", UUID.class);
		return new Round(row.getObject("message", UUID.class), new AdvisoryId(row.getObject("advisory", UUID.class)),
				Kind.valueOf(row.getString("kind")), Rows.time(row, "sent_at"), Phase.valueOf(row.getString("phase")),
				(reached != null) ? new PersonId(reached) : null);
	}

	/**
	 * Notes how far the rows are made.
	 * @param message the message
	 * @param reached the last person of the page
	 * @param people people of the page
	 * @param rows rows made for them
	 */
	public void reached(UUID message, PersonId reached, int people, int rows) {
		this.database.sql("""
				update reminders.advisory_round
				set reached = ?, people = people + ?, rows_made = rows_made + ? where message = ?
				""").params(reached.value(), people, rows, message).update();
	}

	/**
	 * Goes on to another phase.
	 * @param message the message
	 * @param phase the phase
	 * @param now the time
	 */
	public void phase(UUID message, Phase phase, Instant now) {
		this.database.sql("""
				update reminders.advisory_round set phase = :phase, reached = null, ended_at = :ended::timestamptz
				where message = :message
				""")
			.param("phase", phase.name())
			.param("ended", (phase == Phase.DONE) ? Rows.time(now) : null)
			.param("message", message)
			.update();
	}

	/**
	 * Who was told of an advisory, or is being told.
	 * @param advisory the advisory
	 * @param before number of the message before which they were told
	 * @param after the last person of the page before; null begins
	 * @param most people at most
	 * @return codes of the channels by person, in the order of persons
	 */
	public Map<PersonId, Set<String>> told(AdvisoryId advisory, int before, @Nullable PersonId after, int most) {
		Map<PersonId, Set<String>> told = new LinkedHashMap<>();
		this.database.sql("""
				select person_id, array_agg(distinct channel) as channels from reminders.reminder
				where advisory = :advisory and advisory_number < :before
				and (state in ('SENT', 'KEPT') or claimed_by is not null)
				and (:after::uuid is null or person_id > :after::uuid)
				group by person_id order by person_id limit :most
				""")
			.param("advisory", advisory.value())
			.param("before", before)
			.param("after", (after != null) ? after.value() : null)
			.param("most", most)
			.query((row) -> {
				Array channels = row.getArray("channels");
				told.put(new PersonId(row.getObject("person_id", UUID.class)), Set.of((String[]) channels.getArray()));
			});
		return told;
	}

	/**
	 * Withdraws what waits to tell an earlier message: the later one is told instead.
	 * @param advisory the advisory
	 * @param before number of the later message
	 * @param people whose rows
	 * @return whose rows were withdrawn
	 */
	public Set<PersonId> supersede(AdvisoryId advisory, int before, Collection<PersonId> people) {
		return Set.copyOf(this.database.sql("""
				update reminders.reminder set state = 'WITHDRAWN'
				where advisory = :advisory and person_id = any(:people) and advisory_number < :before
				and state = 'PENDING' and claimed_by is null returning person_id
				""")
			.param("advisory", advisory.value())
			.param("people", people.stream().map(PersonId::value).toArray(UUID[]::new))
			.param("before", before)
			.query((row, number) -> new PersonId(row.getObject("person_id", UUID.class)))
			.set());
	}

	/**
	 * A row to be made.
	 *
	 * @param person who is told
	 * @param channel code of the channel
	 * @param told which message, and what of it is new
	 * @param turn when
	 * @param firstTry when it is tried first, not before it is due
	 */
	public record NewRow(PersonId person, String channel, OfAdvisory told, Turn turn, Instant firstTry) {
	}

	/**
	 * Makes rows; those that are there already stay as they are.
	 * @param rows the rows
	 * @return how many were made
	 */
	public int add(Collection<NewRow> rows) {
		Columns columns = new Columns();
		rows.forEach((row) -> columns.add(UUID.randomUUID(), row.person().value(), row.channel(), Topic.ADVISORY.code(),
				row.turn().bundle(), row.turn().day(), key(row), Rows.time(row.turn().dueAt()),
				Rows.time(row.turn().expiresAt()), Rows.time(row.firstTry()), row.told().advisory().value(),
				row.told().number(), row.told().news().name()));
		return columns.isEmpty() ? 0 : this.database.sql("""
				insert into reminders.reminder
				(id, person_id, channel, topic, bundle, first_day, dedup_key, due_at, expires_at, next_try_at,
					advisory, advisory_number, advisory_news, state)
				select *, 'PENDING' from unnest(?::uuid[], ?::uuid[], ?::text[], ?::text[], ?::text[], ?::date[],
					?::text[], ?::timestamptz[], ?::timestamptz[], ?::timestamptz[], ?::uuid[], ?::int[], ?::text[])
				on conflict (dedup_key) do nothing
				""").params(columns.arrays()).update();
	}

	private static String key(NewRow row) {
		return AdvisoryDue.dedupKey(row.channel(), row.told().advisory().value(), row.told().number(),
				row.person().value());
	}

	/**
	 * What became of the rows of an advisory, those included that were tidied away.
	 * @param advisory the advisory
	 * @return by code of the channel
	 */
	public SortedMap<String, Delivered> delivered(AdvisoryId advisory) {
		SortedMap<String, Delivered> all = new TreeMap<>();
		this.database
			.sql("""
					select channel, sum(sent)::bigint as sent, sum(waiting)::bigint as waiting, sum(failed)::bigint as failed
					from (
						select channel, count(*) filter (where state in ('SENT', 'KEPT')) as sent,
							count(*) filter (where state = 'PENDING') as waiting,
							count(*) filter (where state in ('FAILED', 'EXPIRED')) as failed
						from reminders.reminder where advisory = :advisory group by channel
						union all
						select channel, sent, 0, failed from reminders.advisory_past where advisory = :advisory
					) counts group by channel
					""")
			.param("advisory", advisory.value())
			.query((row) -> {
				all.put(row.getString("channel"),
						new Delivered(row.getLong("sent"), row.getLong("waiting"), row.getLong("failed")));
			});
		return all;
	}

	/**
	 * Whether rows of an advisory are still to be made.
	 * @param advisory the advisory
	 * @return false when all are made
	 */
	public boolean making(AdvisoryId advisory) {
		return this.database.sql("""
				select exists (select 1 from reminders.advisory_round where advisory = ? and ended_at is null)
				""").param(advisory.value()).query(Boolean.class).single();
	}

	/**
	 * What a person hears of an advisory for the first time, or not.
	 * @param kind what the message did
	 * @param before whether they were told before
	 * @return what is new to them
	 */
	public static News news(Kind kind, boolean before) {
		return (kind == Kind.CANCELLED) ? News.OFF : before ? News.CHANGED : News.NEW;
	}

}
