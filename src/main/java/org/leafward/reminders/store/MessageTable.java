package org.leafward.reminders.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The mail rows. */
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
	 * Writes a mail that is about to be sent. An earlier one with the same identifier
	 * keeps its Message-ID and its time, and gets the new words, as long as it waits.
	 * @param mail the mail
	 */
	public void save(Message mail) {
		this.database.sql("""
				insert into reminders.mail
				(id, person_id, sender, recipient, recipient_name, subject, body_text, body_html, message_id, state,
				created_at)
				values (:id, :person, :sender, :recipient, :name, :subject, :text, :html, :messageId, 'WAITING', :at)
				on conflict (id) do update
				set sender = excluded.sender, recipient = excluded.recipient, recipient_name = excluded.recipient_name,
					subject = excluded.subject, body_text = excluded.body_text, body_html = excluded.body_html
				where mail.state = 'WAITING'
				""")
			.param("id", mail.id())
			.param("person", mail.person().value())
			.param("sender", mail.sender())
			.param("recipient", mail.recipient())
			.param("name", mail.recipientName())
			.param("subject", mail.subject())
			.param("text", mail.text())
			.param("html", mail.html())
			.param("messageId", mail.messageId())
			.param("at", Rows.time(mail.createdAt()))
			.update();
	}

	/**
	 * Records what became of a try.
	 * @param id the mail
	 * @param state where it stands now
	 * @param sentAt when a mail server took it
	 * @param reply why it was not taken
	 */
	public void record(UUID id, MessageState state, @Nullable Instant sentAt, @Nullable String reply) {
		this.database.sql("""
				update reminders.mail set state = :state, sent_at = :sentAt, server_reply = :reply
				where id = :id and state = 'WAITING'
				""")
			.param("state", state.name())
			.param("sentAt", (sentAt != null) ? Rows.time(sentAt) : null)
			.param("reply", reply)
			.param("id", id)
			.update();
	}

	/**
	 * Drops the waiting mails of a person that no row waits for any more.
	 * @param person whose mails
	 */
	public void dropUnwanted(PersonId person) {
		this.database.sql("""
				update reminders.mail m set state = 'DROPPED'
				where m.person_id = :person and m.state = 'WAITING' and not exists (
					select 1 from reminders.reminder r
					where r.mail_id = m.id and r.state in ('PENDING', 'CLAIMED'))
				""").param("person", person.value()).update();
	}

	/**
	 * One mail.
	 * @param id its identifier
	 * @return empty when there is none
	 */
	public Optional<Message> find(UUID id) {
		return this.database.sql("select * from reminders.mail where id = ?")
			.param(id)
			.query(MessageTable::mail)
			.optional();
	}

	/**
	 * Mails, newest first.
	 * @param person whose; null for everybody's
	 * @param skip how many to leave out
	 * @param most how many at most
	 * @return never null
	 */
	public List<Message> newest(@Nullable PersonId person, long skip, int most) {
		JdbcClient.StatementSpec select = this.database
			.sql("select * from reminders.mail %s order by created_at desc, id desc limit :most offset :skip"
				.formatted((person != null) ? "where person_id = :person" : ""))
			.param("most", most)
			.param("skip", skip);
		if (person != null) {
			select = select.param("person", person.value());
		}
		return select.query(MessageTable::mail).list();
	}

	private static Message mail(ResultSet row, int number) throws SQLException {
		return new Message(row.getObject("id", UUID.class), new PersonId(row.getObject("person_id", UUID.class)),
				row.getString("sender"), row.getString("recipient"), row.getString("recipient_name"),
				row.getString("subject"), row.getString("body_text"), row.getString("body_html"),
				row.getString("message_id"), MessageState.valueOf(row.getString("state")), Rows.time(row, "created_at"),
				Rows.timeOrNull(row, "sent_at"), row.getString("server_reply"));
	}

}
