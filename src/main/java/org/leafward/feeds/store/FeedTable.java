package org.leafward.feeds.store;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.feeds.FeedForm;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.FeedPart;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.register.SiteId;
import org.leafward.accounts.Rows;
import java.util.Map;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.FeedExpired;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.FeedInfo;
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.FeedState;
import org.leafward.feeds.core.FeedLife;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Repository;

/** Feeds. */
@Repository
public class FeedTable {

	private static final int MOST_ROWS = 200;

	/** The columns of {@link #options}, of a table called f. */
	static final String OPTIONS = "f.language, f.units, f.parts, f.alarm, f.behind, f.ahead";

	private static final UUID NOBODY = new UUID(0, 0);

	private final JdbcClient database;

	FeedTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Writes a new feed.
	 * @param id identifier
	 * @param kind whose tasks
	 * @param what identifier of the person or site
	 * @param owner who may revoke it
	 * @param hash SHA-256 of its token
	 * @param options what it holds and how it speaks
	 * @param at when
	 */
	public void add(FeedId id, FeedKind kind, UUID what, PersonId owner, byte[] hash, FeedOptions options, Instant at) {
		with(options, this.database.sql("""
				insert into feeds.feed (id, kind, what, owner, token_hash, created_at, language, units, parts, alarm,
				behind, ahead) values (:id, :kind, :what, :owner, :hash, :at, :language, :units, :parts, :alarm,
				:behind, :ahead)
				""")).param("id", id.value())
			.param("kind", kind.name())
			.param("what", what)
			.param("owner", owner.value())
			.param("hash", hash)
			.param("at", utc(at))
			.update();
	}

	/**
	 * Changes what a living feed holds and how it speaks.
	 * @param id the feed
	 * @param owner its owner
	 * @param options what it holds from now on
	 * @return false when there is no such feed
	 */
	public boolean change(FeedId id, PersonId owner, FeedOptions options) {
		return with(options, this.database.sql("""
				update feeds.feed set language = :language, units = :units, parts = :parts, alarm = :alarm,
				behind = :behind, ahead = :ahead
				where id = :id and owner = :owner and revoked_at is null
				""")).param("id", id.value()).param("owner", owner.value()).update() > 0;
	}

	private static StatementSpec with(FeedOptions options, StatementSpec statement) {
		return statement.param("language", options.speech().language().code())
			.param("units", options.speech().units().code())
			.param("parts", parts(options))
			.param("alarm", options.alarm(), Types.TIME)
			.param("behind", options.behind())
			.param("ahead", options.ahead());
	}

	private static String[] parts(FeedOptions options) {
		return options.parts().stream().sorted().map(FeedPart::name).toArray(String[]::new);
	}

	static FeedOptions options(ResultSet row) throws SQLException {
		Set<FeedPart> parts = Arrays.stream((String[]) row.getArray("parts").getArray())
			.map(FeedPart::valueOf)
			.collect(Collectors.toCollection(() -> EnumSet.noneOf(FeedPart.class)));
		return new FeedOptions(
				new Speech(Language.of("language", row.getString("language")),
						Units.of("units", row.getString("units"))),
				parts, row.getObject("alarm", LocalTime.class), row.getInt("behind"), row.getInt("ahead"));
	}

	public long countLiving(FeedKind kind, UUID what, PersonId owner) {
		return this.database
			.sql("select count(*) from feeds.feed where kind = ? and what = ? and owner = ? and revoked_at is null")
			.params(kind.name(), what, owner.value())
			.query(Long.class)
			.single();
	}

	public List<FeedInfo> ofOwner(PersonId owner) {
		return this.database.sql("select * from feeds.feed f where owner = ? order by created_at desc, id limit ?")
			.params(owner.value(), MOST_ROWS)
			.query(FeedTable::info)
			.list();
	}

	public List<FeedInfo> of(FeedKind kind, UUID what) {
		return this.database
			.sql("select * from feeds.feed f where kind = ? and what = ? order by created_at desc, id limit ?")
			.params(kind.name(), what, MOST_ROWS)
			.query(FeedTable::info)
			.list();
	}

	public Optional<FeedInfo> find(FeedId feed) {
		return this.database.sql("select * from feeds.feed f where id = ?")
			.param(feed.value())
			.query(FeedTable::info)
			.optional();
	}

	public Optional<PersonId> ownerOf(FeedId feed) {
		return this.database.sql("select owner from feeds.feed where id = ?")
			.param(feed.value())
			.query((row, number) -> new PersonId(row.getObject("owner", UUID.class)))
			.optional();
	}

	/**
	 * Revokes a feed and drops its document.
	 * @param feed the feed
	 * @param owner its owner
	 * @param at when, unless it was revoked before
	 * @return false when there is no such feed of this owner
	 */
	public boolean revoke(FeedId feed, PersonId owner, Instant at) {
		int found = this.database
			.sql("update feeds.feed set revoked_at = coalesce(revoked_at, ?) where id = ? and owner = ?")
			.params(utc(at), feed.value(), owner.value())
			.update();
		if (found > 0) {
			this.database.sql("delete from feeds.feed_document where feed_id = ?").param(feed.value()).update();
		}
		return found > 0;
	}

	/**
	 * Kills feeds for good and forgets whose they were; their addresses stay dead.
	 * @param kind whose tasks
	 * @param what identifier of the person or site
	 * @param at when, unless they were dead before
	 */
	public void abandon(FeedKind kind, UUID what, Instant at) {
		this.database.sql("""
				delete from feeds.feed_document where feed_id in (select id from feeds.feed where kind = ? and what = ?)
				""").params(kind.name(), what).update();
		this.database.sql(
				"update feeds.feed set revoked_at = coalesce(revoked_at, ?), owner = ?, what = ? where kind = ? and what = ?")
			.params(utc(at), NOBODY, NOBODY, kind.name(), what)
			.update();
	}

	/**
	 * A feed as somebody who polls sees it.
	 *
	 * @param state what to answer
	 * @param lastFetchedAt when it was last asked, as far as noted; null for never
	 */
	public record Polled(FeedState state, @Nullable Instant lastFetchedAt) {
	}

	/**
	 * Looks a feed up.
	 * @param hash SHA-256 of a token
	 * @param form of which form to tell
	 * @return empty for an unknown one
	 */
	public Optional<Polled> findByHash(byte[] hash, FeedForm form) {
		return this.database.sql("""
				select f.revoked_at is not null as revoked, f.expired, d.etag, d.last_modified, f.last_fetched_at
				from feeds.feed f left join feeds.feed_document d on d.feed_id = f.id and d.form = ?
				where f.token_hash = ?
				""")
			.params(form.name(), hash)
			.query((row,
					number) -> new Polled(
							new FeedState(hash, form, row.getBoolean("revoked"), row.getBoolean("expired"),
									row.getString("etag"), instant(row, "last_modified")),
							instant(row, "last_fetched_at")))
			.optional();
	}

	/**
	 * Ends feeds whose last day has come and drops their documents. The first condition
	 * finds them by their index, the second one is exact: whole months after the day.
	 * @param today the day, UTC
	 * @param at when
	 * @param most how many at once
	 * @return those that ended
	 */
	public List<FeedExpired> expire(LocalDate today, Instant at, int most) {
		List<FeedExpired> ended = this.database.sql("""
				update feeds.feed set revoked_at = :at, expired = true where id in (
				select id from feeds.feed where revoked_at is null
				and coalesce(last_fetched_at, created_at) < :early
				and (coalesce(last_fetched_at, created_at) at time zone 'UTC')::date
				+ make_interval(months => :months) <= :today
				order by coalesce(last_fetched_at, created_at) limit :most for update skip locked)
				returning id, owner
				""")
			.param("at", utc(at))
			.param("early", today.minusMonths(FeedLife.MONTHS).plusDays(4).atStartOfDay().atOffset(ZoneOffset.UTC))
			.param("months", FeedLife.MONTHS)
			.param("today", today)
			.param("most", most)
			.query((row, number) -> new FeedExpired(row.getObject("id", UUID.class),
					row.getObject("owner", UUID.class)))
			.list();
		if (!ended.isEmpty()) {
			this.database.sql("delete from feeds.feed_document where feed_id in (:feeds)")
				.param("feeds", ended.stream().map(FeedExpired::feed).toList())
				.update();
		}
		return ended;
	}

	private static FeedInfo info(ResultSet row, int number) throws SQLException {
		return new FeedInfo(new FeedId(row.getObject("id", UUID.class)), FeedKind.valueOf(row.getString("kind")),
				row.getObject("what", UUID.class), row.getObject("created_at", OffsetDateTime.class).toInstant(),
				instant(row, "revoked_at"), instant(row, "last_fetched_at"), options(row));
	}

	static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
		OffsetDateTime value = row.getObject(column, OffsetDateTime.class);
		return (value != null) ? value.toInstant() : null;
	}

	static OffsetDateTime utc(Instant at) {
		return at.atOffset(ZoneOffset.UTC);
	}

	/**
	 * The feeds of an owner as rows, without what opens them.
	 * @param owner the owner
	 * @return oldest first
	 */
	public List<Map<String, Object>> rowsOf(PersonId owner) {
		return this.database
			.sql("""
					select id, lower(kind) as "kind", what, language, units, array_to_string(parts, ' ') as "parts",
						alarm, behind as "daysBehind", ahead as "daysAhead", created_at as "createdAt", revoked_at as "revokedAt",
						last_fetched_at as "lastFetchedAt"
					from feeds.feed where owner = ? order by created_at, id""")
			.param(owner.value())
			.query(Rows::plain)
			.list();
	}

	/**
	 * Deletes the feeds of a person and of their sites, whoever made them.
	 * @param person who
	 * @param sites theirs
	 */
	public void forget(PersonId person, List<SiteId> sites) {
		this.database.sql("""
				delete from feeds.feed where owner = :person or (kind = 'PERSON' and what = :person)
					or (kind = 'SITE' and what = any(:sites))""")
			.param("person", person.value())
			.param("sites", sites.stream().map(SiteId::value).toArray(UUID[]::new))
			.update();
	}

	/**
	 * Gives the feeds of one person to another one; they show what that person has from
	 * now on.
	 * @param from who has them
	 * @param into who gets them
	 */
	public void handOver(PersonId from, PersonId into) {
		this.database.sql("""
				update feeds.feed_document set stale = true
				where feed_id in (select id from feeds.feed where owner = :from or what = :from)""")
			.param("from", from.value())
			.update();
		this.database.sql("update feeds.feed set what = :into where kind = 'PERSON' and what = :from")
			.param("from", from.value())
			.param("into", into.value())
			.update();
		this.database.sql("update feeds.feed set owner = :into where owner = :from")
			.param("from", from.value())
			.param("into", into.value())
			.update();
	}

}
