package org.leafward.quick.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.FeedId;
import org.leafward.quick.QuickCalendar;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Quick calendars. */
@Repository
public class QuickTable {

	private final JdbcClient database;

	QuickTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Lets nobody else use the key of a form before this transaction ends.
	 * @param key the key
	 */
	public void lock(UUID key) {
		this.database.sql("select pg_advisory_xact_lock(hashtextextended(?, 70))")
			.param(key.toString())
			.query((row, number) -> true)
			.single();
	}

	/**
	 * Writes a calendar.
	 * @param calendar the calendar
	 * @param hash SHA-256 of the secret that manages it
	 * @param key key of its form
	 * @param at when
	 */
	public void add(QuickCalendar calendar, byte[] hash, UUID key, Instant at) {
		this.database.sql("""
				insert into quick.calendar (id, person, site, feed, manage_hash, form_key, created_at)
				values (?, ?, ?, ?, ?, ?, ?)
				""")
			.params(calendar.id(), calendar.person().value(), calendar.site().value(), calendar.feed().value(), hash,
					key, at.atOffset(ZoneOffset.UTC))
			.update();
	}

	public Optional<QuickCalendar> ofKey(UUID key) {
		return one("select * from quick.calendar where form_key = ?", key);
	}

	public Optional<QuickCalendar> ofHash(byte[] hash) {
		return one("select * from quick.calendar where manage_hash = ?", hash);
	}

	public Optional<QuickCalendar> ofFeed(FeedId feed) {
		return one("select * from quick.calendar where feed = ?", feed.value());
	}

	private Optional<QuickCalendar> one(String query, Object value) {
		return this.database.sql(query).param(value).query(QuickTable::calendar).optional();
	}

	public List<QuickCalendar> ofPerson(PersonId person) {
		return this.database.sql("select * from quick.calendar where person = ? order by created_at, id")
			.param(person.value())
			.query(QuickTable::calendar)
			.list();
	}

	/**
	 * Takes the key off a calendar that stays, so that another may use it.
	 * @param calendar the calendar
	 */
	public void freeKey(UUID calendar) {
		this.database.sql("update quick.calendar set form_key = null where id = ?").param(calendar).update();
	}

	public void changeFeed(UUID calendar, FeedId feed) {
		this.database.sql("update quick.calendar set feed = ? where id = ?").params(feed.value(), calendar).update();
	}

	public void forget(PersonId person) {
		this.database.sql("delete from quick.calendar where person = ?").param(person.value()).update();
	}

	public void handOver(PersonId from, PersonId into) {
		this.database.sql("update quick.calendar set person = ? where person = ?")
			.params(into.value(), from.value())
			.update();
	}

	private static QuickCalendar calendar(ResultSet row, int number) throws SQLException {
		return new QuickCalendar(row.getObject("id", UUID.class), new PersonId(row.getObject("person", UUID.class)),
				new SiteId(row.getObject("site", UUID.class)), new FeedId(row.getObject("feed", UUID.class)));
	}

}
