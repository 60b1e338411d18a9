package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.Series;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The messages. */
@Repository
public class MessageTable {

	private final JdbcClient database;

	/**
	 * Creates the table's door.
	 * @param database where it lies
	 */
	public MessageTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Writes messages that are about to be sent. An earlier one with the same identifier
	 * keeps its Message-ID and its time, and gets the new words, as long as it waits.
	 * @param messages the messages
	 */
	public void save(Collection<Message> messages) {
		Columns rows = new Columns();
		messages.forEach((message) -> rows.add(columns(message)));
		if (!rows.isEmpty()) {
			this.database
				.sql("""
						insert into reminders.message
						(id, person_id, channel, series, sender, recipient, recipient_name, subject, body_text, body_html, brief,
						link, content, thread, message_id, created_at, state)
						select *, 'WAITING' from unnest(?::uuid[], ?::uuid[], ?::text[], ?::text[], ?::text[], ?::text[],
							?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::text[],
							?::timestamptz[])
						on conflict (id) do update
						set series = excluded.series, sender = excluded.sender, recipient = excluded.recipient,
							recipient_name = excluded.recipient_name, subject = excluded.subject,
							body_text = excluded.body_text, body_html = excluded.body_html, brief = excluded.brief,
							link = excluded.link, content = excluded.content, thread = excluded.thread
						where message.state = 'WAITING'
						""")
				.params(rows.arrays())
				.update();
		}
	}

	private static @Nullable Object[] columns(Message message) {
		MessageText words = message.words();
		return new @Nullable Object[] { message.id(), message.person().value(), message.channel(),
				message.series().code(), message.sender(), message.recipient(), message.recipientName(),
				words.subject(), words.text(), words.html(), words.brief(), words.link(), words.content(),
				message.thread(), message.messageId(), Rows.time(message.createdAt()) };
	}

	/**
	 * Records what became of tries.
	 * @param records what became of each
	 */
	public void record(Collection<Record> records) {
		Columns rows = new Columns();
		records.forEach((each) -> rows.add(each.id(), each.state().name(), each.sentAtColumn(), each.reply(),
				each.unsure() ? 1 : 0));
		if (!rows.isEmpty()) {
			this.database.sql("""
					update reminders.message m
					set state = r.state, sent_at = r.sent_at, server_reply = r.reply, uncertain = m.uncertain + r.unsure
					from unnest(?::uuid[], ?::text[], ?::timestamptz[], ?::text[], ?::int[])
						as r(id, state, sent_at, reply, unsure)
					where m.id = r.id and m.state = 'WAITING'
					""").params(rows.arrays()).update();
		}
	}

	/**
	 * What became of a try.
	 *
	 * @param id the message
	 * @param state where it stands now
	 * @param sentAt when the other side took it
	 * @param reply why it was not taken
	 * @param unsure whether nobody knows if it was taken
	 */
	public record Record(UUID id, MessageState state, @Nullable Instant sentAt, @Nullable String reply,
			boolean unsure) {

		@Nullable OffsetDateTime sentAtColumn() {
			return (this.sentAt != null) ? Rows.time(this.sentAt) : null;
		}

	}

	/**
	 * Drops the waiting messages of people that no row waits for any more.
	 * @param people whose messages
	 */
	public void dropUnwanted(Collection<PersonId> people) {
		this.database.sql("""
				update reminders.message m set state = 'DROPPED'
				where m.person_id = any(:people) and m.state = 'WAITING' and not exists (
					select 1 from reminders.reminder r
					where r.person_id = m.person_id and r.state = 'PENDING'
					and reminders.message_of(r.message_id, r.claimed_by, r.person_id, r.channel, r.bundle) = m.id)
				""").param("people", people.stream().map(PersonId::value).toArray(UUID[]::new)).update();
	}

	/**
	 * One message.
	 * @param id its identifier
	 * @return empty when there is none
	 */
	public Optional<Message> find(UUID id) {
		return this.database.sql("select * from reminders.message where id = ?")
			.param(id)
			.query(MessageTable::message)
			.optional();
	}

	/**
	 * Several messages.
	 * @param ids their identifiers
	 * @return those that are there
	 */
	public Map<UUID, Message> find(Collection<UUID> ids) {
		if (ids.isEmpty()) {
			return Map.of();
		}
		return this.database.sql("select * from reminders.message where id = any(?)")
			.param(ids.toArray(UUID[]::new))
			.query(MessageTable::message)
			.list()
			.stream()
			.collect(Collectors.toMap(Message::id, (message) -> message));
	}

	/**
	 * Messages, newest first.
	 * @param person whose; null for everybody's
	 * @param skip how many to leave out
	 * @param most how many at most
	 * @return never null
	 */
	public List<Message> newest(@Nullable PersonId person, long skip, int most) {
		JdbcClient.StatementSpec select = this.database
			.sql("select * from reminders.message %s order by created_at desc, id desc limit :most offset :skip"
				.formatted((person != null) ? "where person_id = :person" : ""))
			.param("most", most)
			.param("skip", skip);
		if (person != null) {
			select = select.param("person", person.value());
		}
		return select.query(MessageTable::message).list();
	}

	static Message message(ResultSet row, int number) throws SQLException {
		MessageText words = new MessageText(row.getString("subject"), row.getString("body_text"),
				row.getString("body_html"), row.getString("brief"), row.getString("link"), row.getString("content"));
		return new Message(row.getObject("id", UUID.class), new PersonId(row.getObject("person_id", UUID.class)),
				row.getString("channel"), Series.of(row.getString("series")), row.getString("sender"),
				row.getString("recipient"), row.getString("recipient_name"), words, row.getString("thread"),
				row.getString("message_id"), MessageState.valueOf(row.getString("state")), Rows.time(row, "created_at"),
				Rows.timeOrNull(row, "sent_at"), row.getString("server_reply"), row.getInt("uncertain"));
	}

}
