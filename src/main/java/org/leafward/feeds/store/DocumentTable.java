package org.leafward.feeds.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.FeedDocument;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.FeedForm;
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.core.FeedLife;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Documents of feeds, and which of them are to be built. */
@Repository
public class DocumentTable {

	private static final String CLAIMED = "select " + FeedTable.OPTIONS
			+ """
					, f.id, f.kind, f.what, f.owner, f.created_at, f.last_fetched_at, coalesce(d.form, 'EVENTS') as form, d.packed,
					d.etag, d.last_modified, d.built_at, d.ahead_by
					from feeds.feed f
					""";

	/** A program that is this late may never ask again. */
	private static final Duration OVERDUE = Duration.ofDays(1);

	private final JdbcClient database;

	DocumentTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * A document to build.
	 *
	 * @param id the feed
	 * @param form in which form
	 * @param kind whose tasks
	 * @param what identifier of the person, site, bed or group
	 * @param owner who reads it; null when nobody does
	 * @param options what it holds and how it speaks
	 * @param life when it was made and last used
	 * @param before the document before; null without one
	 * @param aheadBy how far its sequence numbers have run ahead
	 */
	public record Claimed(FeedId id, FeedForm form, FeedKind kind, UUID what, @Nullable PersonId owner,
			FeedOptions options, FeedLife life, @Nullable FeedDocument before, int aheadBy) {

		/**
		 * A feed without a document.
		 * @param id the feed
		 * @param kind whose tasks
		 * @param what identifier of the person, site, bed or group
		 * @param owner who reads it
		 * @param options what it holds and how it speaks
		 * @param createdAt when the feed was made
		 * @return to build a document of entries for
		 */
		public static Claimed of(FeedId id, FeedKind kind, UUID what, PersonId owner, FeedOptions options,
				Instant createdAt) {
			return new Claimed(id, FeedForm.EVENTS, kind, what, owner, options, FeedLife.of(createdAt, null), null, 0);
		}

		/**
		 * The same feed in another form, before there is a document of it.
		 * @param other the form
		 * @return to build
		 */
		public Claimed in(FeedForm other) {
			return (other == this.form) ? this
					: new Claimed(this.id, other, this.kind, this.what, this.owner, this.options, this.life, null, 0);
		}

	}

	/**
	 * A document just built.
	 *
	 * @param feed the feed
	 * @param form its form
	 * @param document what to serve
	 * @param aheadBy how far its sequence numbers have run ahead
	 * @param day the day it was built for, UTC
	 * @param at when
	 */
	public record Built(FeedId feed, FeedForm form, FeedDocument document, int aheadBy, LocalDate day, Instant at) {
	}

	/**
	 * The document of an address.
	 * @param hash SHA-256 of its token
	 * @param form in which form
	 * @return empty when the feed is gone, or has none
	 */
	public Optional<FeedDocument> document(byte[] hash, FeedForm form) {
		return this.database.sql("""
				select d.packed, d.etag, d.last_modified from feeds.feed f
				join feeds.feed_document d on d.feed_id = f.id and d.form = ?
				where f.token_hash = ?
				""").params(form.name(), hash).query(DocumentTable::stored).optional();
	}

	private static FeedDocument stored(ResultSet row, int number) throws SQLException {
		return new FeedDocument(row.getBytes("packed"), row.getString("etag"),
				row.getObject("last_modified", OffsetDateTime.class).toInstant());
	}

	/**
	 * A living feed, without its document.
	 * @param hash SHA-256 of its token
	 * @return empty when it was revoked
	 */
	public Optional<Claimed> unrevoked(byte[] hash) {
		return this.database
			.sql(CLAIMED + "left join feeds.feed_document d on false where f.token_hash = ? and f.revoked_at is null")
			.param(hash)
			.query(DocumentTable::claimed)
			.optional();
	}

	/**
	 * Marks documents stale, in one order everywhere; also those that are stale already,
	 * as one of them may be built just now from the tasks before.
	 * @param site the site whose tasks changed
	 * @param person whose site it is
	 * @return how many show the site
	 */
	public int markStale(UUID site, UUID person) {
		return this.database.sql("""
				update feeds.feed_document set stale = true where (feed_id, form) in (
				select d.feed_id, d.form from feeds.feed f join feeds.feed_document d on d.feed_id = f.id
				where f.revoked_at is null
				and (f.kind = 'SITE' and f.what = ? or f.kind = 'PERSON' and f.what = ?)
				order by d.feed_id, d.form for update of d)
				""").params(site, person).update();
	}

	/**
	 * Marks documents of people's calendars stale.
	 * @param people whose
	 * @param others also those of their sites and groups
	 */
	public void markStaleOf(Collection<PersonId> people, boolean others) {
		stale("(f.kind = 'PERSON' and f.what = any(?))"
				+ (others ? " or (f.kind <> 'PERSON' and f.owner = any(?))" : ""),
				Collections.nCopies(others ? 2 : 1, people.stream().map(PersonId::value).toArray(UUID[]::new)));
	}

	/**
	 * Marks documents of calendars stale.
	 * @param kind about what
	 * @param what its identifier; null for all of that kind
	 */
	public void markStale(FeedKind kind, @Nullable UUID what) {
		stale("f.kind = ?" + ((what != null) ? " and f.what = ?" : ""),
				(what != null) ? List.of(kind.name(), what) : List.of(kind.name()));
	}

	private void stale(String which, List<?> parameters) {
		this.database.sql("""
				update feeds.feed_document set stale = true where (feed_id, form) in (
				select d.feed_id, d.form from feeds.feed f join feeds.feed_document d on d.feed_id = f.id
				where f.revoked_at is null and (%s)
				order by d.feed_id, d.form for update of d)
				""".formatted(which)).params(parameters).update();
	}

	/**
	 * Locks the documents of a feed.
	 * @param feed the feed
	 * @return at most two
	 */
	public List<Claimed> of(FeedId feed) {
		return this.database
			.sql(CLAIMED
					+ "join feeds.feed_document d on d.feed_id = f.id where f.id = ? order by d.form for update of d")
			.param(feed.value())
			.query(DocumentTable::claimed)
			.list();
	}

	/**
	 * Locks the documents that show a site, in one order everywhere.
	 * @param site the site
	 * @param person whose site it is
	 * @return at most 100
	 */
	public List<Claimed> showing(UUID site, UUID person) {
		return this.database.sql(CLAIMED + """
				join feeds.feed_document d on d.feed_id = f.id
				where f.revoked_at is null
				and (f.kind = 'SITE' and f.what = ? or f.kind = 'PERSON' and f.what = ?)
				order by d.feed_id, d.form limit 100 for update of d
				""").params(site, person).query(DocumentTable::claimed).list();
	}

	public void markStale(FeedId feed) {
		this.database.sql("update feeds.feed_document set stale = true where feed_id = ?").param(feed.value()).update();
	}

	/**
	 * Locks the next documents to build, leaving those that another transaction works on:
	 * of the stale ones those that are asked for soonest, those that were to be asked for
	 * long ago last; when none is stale, those that were built for a day before.
	 * @param today documents built for a day before are due
	 * @param now documents that failed wait for their time
	 * @param most how many at most, 1 or more
	 * @return empty when nothing is due
	 */
	public List<Claimed> claim(LocalDate today, Instant now, int most) {
		OffsetDateTime at = FeedTable.utc(now);
		List<Claimed> due = due("d.stale and d.next_poll >= ? order by d.next_poll", at.minus(OVERDUE), at, most);
		if (due.isEmpty()) {
			due = due("d.stale and d.next_poll < ? order by d.next_poll desc", at.minus(OVERDUE), at, most);
		}
		return !due.isEmpty() ? due : due("d.built_for < ? order by d.built_for, d.next_poll", today, at, most);
	}

	/**
	 * Lets the caller's transaction end without waiting for the disk, since news of each
	 * document take turns until they are on it. What a crash of the database loses that
	 * way is stale again, and built once more.
	 */
	public void unhurried() {
		this.database.sql("set local synchronous_commit = off").update();
	}

	private List<Claimed> due(String condition, Object limit, OffsetDateTime now, int most) {
		return this.database
			.sql(CLAIMED + "join feeds.feed_document d on d.feed_id = f.id "
					+ "where f.revoked_at is null and (d.retry_at is null or d.retry_at <= ?) and " + condition
					+ " limit ? for update of d skip locked")
			.params(now, limit, most)
			.query(DocumentTable::claimed)
			.list();
	}

	public void retry(FeedId feed, FeedForm form, Instant at) {
		this.database.sql("update feeds.feed_document set retry_at = ? where feed_id = ? and form = ?")
			.params(FeedTable.utc(at), feed.value(), form.name())
			.update();
	}

	/**
	 * Notes that the document is still right.
	 * @param feed the feed
	 * @param form its form
	 * @param day the day it was built for, UTC
	 * @param at when
	 */
	public void keep(FeedId feed, FeedForm form, LocalDate day, Instant at) {
		this.database.sql("""
				update feeds.feed_document set stale = false, built_for = ?, built_at = ?, retry_at = null
				where feed_id = ? and form = ?
				""").params(day, FeedTable.utc(at), feed.value(), form.name()).update();
	}

	public void store(Built built) {
		FeedDocument document = built.document();
		this.database.sql("""
				insert into feeds.feed_document
				(feed_id, form, packed, etag, last_modified, ahead_by, stale, built_for, built_at)
				values (?, ?, ?, ?, ?, ?, false, ?, ?)
				on conflict (feed_id, form) do update set packed = excluded.packed,
				etag = excluded.etag, last_modified = excluded.last_modified, ahead_by = excluded.ahead_by,
				stale = false, built_for = excluded.built_for, built_at = excluded.built_at, retry_at = null
				""")
			.params(built.feed().value(), built.form().name(), document.packed(), document.etag(),
					FeedTable.utc(document.lastModified()), built.aheadBy(), built.day(), FeedTable.utc(built.at()))
			.update();
	}

	private static Claimed claimed(ResultSet row, int number) throws SQLException {
		FeedDocument before = (row.getString("etag") != null) ? stored(row, number) : null;
		return new Claimed(new FeedId(row.getObject("id", UUID.class)), FeedForm.valueOf(row.getString("form")),
				FeedKind.valueOf(row.getString("kind")), row.getObject("what", UUID.class),
				new PersonId(row.getObject("owner", UUID.class)), FeedTable.options(row),
				FeedLife.of(row.getObject("created_at", OffsetDateTime.class).toInstant(),
						FeedTable.instant(row, "last_fetched_at")),
				before, row.getInt("ahead_by"));
	}

}
