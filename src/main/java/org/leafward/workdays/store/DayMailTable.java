package org.leafward.workdays.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.OtherMails;
import org.leafward.accounts.PersonId;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.WorkdayId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Mails about workdays. They are written in the transaction of what they tell, so that
 * nothing is lost, and leave afterwards: to one person about one workday in the order in
 * which they were written, so that a late invitation can't overtake its end.
 */
@Repository
public class DayMailTable implements OtherMails {

	private final JdbcClient database;

	DayMailTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * A mail.
	 *
	 * @param id names it
	 * @param group whose
	 * @param workday about which; null for the group
	 * @param person to whom
	 * @param kind what it tells
	 * @param recipient the address
	 * @param name the name beside it
	 * @param subject one line
	 * @param body plain text
	 * @param calendar an invitation; null for none
	 * @param method its method; null for none
	 * @param language its code (ISO 639-1)
	 * @param tries how often it was tried
	 * @param createdAt when it was written
	 */
	public record MessageRow(UUID id, GroupId group, @Nullable WorkdayId workday, PersonId person, String kind,
			String recipient, String name, String subject, String body, @Nullable String calendar,
			@Nullable String method, String language, int tries, Instant createdAt) {
	}

	public void add(MessageRow mail) {
		this.database
			.sql("""
					insert into workdays.message (id, group_id, workday, person_id, kind, recipient, recipient_name, subject,
						body, calendar, method, language, state, next_try_at, created_at)
					values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'WAITING', ?, ?)
					""")
			.params(Arrays.asList(mail.id(), mail.group().value(),
					(mail.workday() != null) ? mail.workday().value() : null, mail.person().value(), mail.kind(),
					mail.recipient(), mail.name(), mail.subject(), mail.body(), mail.calendar(), mail.method(),
					mail.language(), mail.createdAt().atOffset(ZoneOffset.UTC),
					mail.createdAt().atOffset(ZoneOffset.UTC)))
			.update();
	}

	/**
	 * Takes mails that are due, for as long as it takes to send them.
	 * @param most how many at most
	 * @param now when
	 * @param lease for how long nobody else takes them
	 * @return in the order in which they were written
	 */
	public List<MessageRow> claim(int most, Instant now, Duration lease) {
		return this.database.sql("""
				with next as (
					select id from workdays.message due
					where state = 'WAITING' and next_try_at <= ? and (claimed_until is null or claimed_until < ?)
						and not exists (select from workdays.message before
							where before.person_id = due.person_id and before.workday is not distinct from due.workday
								and before.state = 'WAITING' and before.number < due.number)
					order by number limit ? for update skip locked)
				update workdays.message set claimed_until = ?, tries = tries + 1
				from next where message.id = next.id
				returning message.*
				""")
			.params(now.atOffset(ZoneOffset.UTC), now.atOffset(ZoneOffset.UTC), most,
					now.plus(lease).atOffset(ZoneOffset.UTC))
			.query(DayMailTable::message)
			.list();
	}

	/**
	 * Writes down what came of a mail. What was sent or given up loses its words: they
	 * hold a link that answers for somebody. What no mail server took is read here.
	 * @param id which
	 * @param state SENT, KEPT, FAILED, or WAITING for another try
	 * @param because why not; null when it was sent
	 * @param now when
	 * @param next when to try again
	 */
	public void finish(UUID id, String state, @Nullable String because, Instant now, Instant next) {
		this.database.sql("""
				update workdays.message set state = ?, because = ?, claimed_until = null, next_try_at = ?,
					sent_at = case when ? = 'SENT' then ?::timestamptz else sent_at end,
					body = case when ? in ('WAITING', 'KEPT') then body else '' end,
					calendar = case when ? = 'WAITING' then calendar end,
					method = case when ? = 'WAITING' then method end
				where id = ?
				""")
			.params(Arrays.asList(state, because, next.atOffset(ZoneOffset.UTC), state, now.atOffset(ZoneOffset.UTC),
					state, state, state, id))
			.update();
	}

	/**
	 * Mails about a workday, the newest first, to show what was told.
	 * @param workday which
	 * @return at most 200
	 */
	public List<MessageRow> of(WorkdayId workday) {
		return this.database.sql("select * from workdays.message where workday = ? order by number desc limit 200")
			.param(workday.value())
			.query(DayMailTable::message)
			.list();
	}

	/**
	 * The key of tokens; made the first time.
	 * @param fresh what it becomes then
	 * @return 32 octets, the same on all nodes
	 */
	public byte[] key(byte[] fresh) {
		this.database.sql("insert into workdays.server_key (id, key) values (1, ?) on conflict do nothing")
			.param(fresh)
			.update();
		return this.database.sql("select key from workdays.server_key where id = 1").query(byte[].class).single();
	}

	@Override
	public List<Letter> newest(PersonId person, int most) {
		return this.database.sql("select * from workdays.message where person_id = ? order by number desc limit ?")
			.params(person.value(), most)
			.query(DayMailTable::letter)
			.list();
	}

	@Override
	public Optional<Letter> find(UUID id) {
		return this.database.sql("select * from workdays.message where id = ?")
			.param(id)
			.query(DayMailTable::letter)
			.optional();
	}

	private static Letter letter(ResultSet row, int number) throws SQLException {
		return new Letter(row.getObject("id", UUID.class), new PersonId(row.getObject("person_id", UUID.class)),
				row.getString("recipient"), row.getString("recipient_name"), row.getString("subject"),
				row.getString("body"), Standing.valueOf(row.getString("state")), row.getString("because"),
				row.getObject("created_at", OffsetDateTime.class).toInstant());
	}

	private static MessageRow message(ResultSet row, int number) throws SQLException {
		UUID workday = row.getObject("workday", UUID.class);
		return new MessageRow(row.getObject("id", UUID.class), new GroupId(row.getObject("group_id", UUID.class)),
				(workday != null) ? new WorkdayId(workday) : null, new PersonId(row.getObject("person_id", UUID.class)),
				row.getString("kind"), row.getString("recipient"), row.getString("recipient_name"),
				row.getString("subject"), row.getString("body"), row.getString("calendar"), row.getString("method"),
				row.getString("language"), row.getInt("tries"),
				row.getObject("created_at", OffsetDateTime.class).toInstant());
	}

}
