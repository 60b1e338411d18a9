package org.leafward.advisories.store;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.core.chain.ChainLink;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.shelf.Counts;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** Messages that were sent. Rows are added and never changed. */
@Repository
public class SentTable {

	private static final String COLUMNS = """
			select seq, id, advisory, number, type, identifier, sender, sent, sent_at, onset, expires, counties, content,
				reason, written_by, approved_by from advisories.message
			""";

	private final JdbcClient database;

	private final JsonMapper json;

	SentTable(JdbcClient database, JsonMapper json) {
		this.database = database;
		this.json = json;
	}

	/**
	 * Lets one transaction at a time write messages of an advisory, on whatever node.
	 * @param advisory the advisory
	 */
	public void lock(UUID advisory) {
		this.database.sql("select pg_advisory_xact_lock(4105, hashtext(?))")
			.param(advisory.toString())
			.query((row, number) -> number)
			.list();
	}

	/**
	 * Adds a message.
	 * @param message the message; its {@code seq} is not looked at
	 * @param cap its document
	 */
	public void add(Message message, byte[] cap) {
		ChainLink link = message.link();
		this.database.sql("""
				insert into advisories.message (id, advisory, number, type, identifier, sender, sent, sent_at, onset,
					expires, zone, condition, counties, content, reason, cap, written_by, approved_by)
				values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?::jsonb, ?, ?, ?, ?)
				""")
			.param(message.id())
			.param(message.advisory())
			.param(message.number())
			.param(link.type().name())
			.param(link.identifier())
			.param(link.sender())
			.param(link.sent())
			.param(at(link.sentAt()))
			.param(at(link.onset()))
			.param(at(link.expires()))
			.param(message.content().zone().getId())
			.param(message.content().condition())
			.param(link.counties().stream().sorted().toArray(String[]::new))
			.param(this.json.writeValueAsString(message.content()))
			.param(message.reason())
			.param(cap)
			.param(message.writer())
			.param(message.approver())
			.update();
	}

	private static OffsetDateTime at(Instant time) {
		return time.atOffset(ZoneOffset.UTC);
	}

	/**
	 * A number that rises with every message: how many there are, as the highest
	 * {@code seq} may be written before a lower one.
	 * @return 0 when there is none
	 */
	public long latest() {
		return this.database.sql("select count(*) from advisories.message").query(Long.class).single();
	}

	/**
	 * The messages of an advisory.
	 * @param advisory the advisory
	 * @return by number
	 */
	public List<Message> of(UUID advisory) {
		return this.database.sql(COLUMNS + "where advisory = ? order by number")
			.param(advisory)
			.query(this::message)
			.list();
	}

	/**
	 * The messages of all advisories of which one ends after a moment.
	 * @param moment the moment
	 * @return by advisory and number, at most 5,000
	 */
	public List<Message> endingAfter(Instant moment) {
		return this.database.sql(COLUMNS + """
				where advisory in (select advisory from advisories.message where expires > ?)
				order by advisory, number limit 5000
				""").param(at(moment)).query(this::message).list();
	}

	/**
	 * The latest messages of advisories, those that were sent last first.
	 * @param counties codes of counties; null for all
	 * @param from messages from then on
	 * @param to messages before then
	 * @param offset how many to leave out
	 * @param most how many at most
	 * @return one of each advisory
	 */
	public List<Message> newest(@Nullable Collection<String> counties, Instant from, Instant to, int offset, int most) {
		return this.database
			.sql("""
					select * from (select distinct on (advisory) seq, id, advisory, number, type, identifier, sender, sent, sent_at,
						onset, expires, counties, content, reason, written_by, approved_by
					from advisories.message where sent_at >= ? and sent_at < ? order by advisory, number desc) latest
					where ?::text[] is null or counties && ?::text[]
					order by sent_at desc, seq desc offset ? limit ?
					""")
			.param(at(from))
			.param(at(to))
			.param((counties != null) ? counties.toArray(String[]::new) : null)
			.param((counties != null) ? counties.toArray(String[]::new) : null)
			.param(offset)
			.param(most)
			.query(this::message)
			.list();
	}

	/**
	 * The document of a message.
	 * @param message its identifier
	 * @return its octets; empty when there is none
	 */
	public Optional<byte[]> document(UUID message) {
		return this.database.sql("select cap from advisories.message where id = ?")
			.param(message)
			.query((row, number) -> row.getBytes(1))
			.optional();
	}

	private Message message(ResultSet row, int number) throws SQLException {
		Content content = this.json.readValue(row.getString("content"), Content.class);
		ChainLink link = new ChainLink(MessageType.valueOf(row.getString("type")), row.getString("sender"),
				row.getString("identifier"), row.getString("sent"), instant(row, "sent_at"), instant(row, "onset"),
				instant(row, "expires"), texts(row.getArray("counties")));
		return new Message(row.getLong("seq"), row.getObject("id", UUID.class), row.getObject("advisory", UUID.class),
				row.getInt("number"), link, content, row.getString("reason"), row.getObject("written_by", UUID.class),
				row.getObject("approved_by", UUID.class));
	}

	static Instant instant(ResultSet row, String column) throws SQLException {
		return row.getObject(column, OffsetDateTime.class).toInstant();
	}

	static Set<String> texts(Array array) throws SQLException {
		return Set.of((String[]) array.getArray());
	}

	/**
	 * Notes whom a message concerned.
	 * @param message its identifier
	 * @param reach the counts
	 * @param now when they were counted
	 */
	public void reached(UUID message, Counts reach, Instant now) {
		this.database.sql("""
				insert into advisories.reach (message, people, sites, plantings, counted_at) values (?, ?, ?, ?, ?)
				on conflict (message) do nothing
				""").params(message, reach.people(), reach.sites(), reach.plantings(), at(now)).update();
	}

	/**
	 * Whom a message concerned when it was sent.
	 * @param message its identifier
	 * @return empty until they are counted
	 */
	public Optional<Counts> reach(UUID message) {
		return this.database.sql("select people, sites, plantings from advisories.reach where message = ?")
			.param(message)
			.query((row, number) -> new Counts(row.getLong(1), row.getLong(2), row.getLong(3)))
			.optional();
	}

}
