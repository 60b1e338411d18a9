package org.leafward.feeds.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.FeedDocument;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.FeedKind;
import org.leafward.feeds.core.FeedLife;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Documents of feeds, and which of them are to be built. */
@Repository
public class DocumentTable {

	private static final String CLAIMED = """
			select f.id, f.kind, f.what, f.created_at, f.last_fetched_at, d.etag, d.last_modified, d.built_at
			from feeds.feed f
			""";

	private final JdbcClient database;

	DocumentTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * A feed to build a document for.
	 *
	 * @param id the feed
	 * @param kind whose tasks
	 * @param what identifier of the person or site
	 * @param life when it was made and last used
	 * @param etag tag of the document; null without one
	 * @param lastModified date of the document; null without one
	 * @param builtAt when it was last built; the beginning of time without one
	 */
	public record Claimed(FeedId id, FeedKind kind, UUID what, FeedLife life, @Nullable String etag,
			@Nullable Instant lastModified, Instant builtAt) {

		/**
		 * A feed without a document.
		 * @param id the feed
		 * @param kind whose tasks
		 * @param what identifier of the person or site
		 * @param createdAt when the feed was made
		 * @return to build a document for
		 */
		public static Claimed of(FeedId id, FeedKind kind, UUID what, Instant createdAt) {
			return new Claimed(id, kind, what, FeedLife.of(createdAt, null), null, null, Instant.EPOCH);
		}

	}

	/**
	 * A document just built.
	 *
	 * @param feed the feed
	 * @param document what to serve
	 * @param day the day it was built for, UTC
	 * @param at when
	 */
	public record Built(FeedId feed, FeedDocument document, LocalDate day, Instant at) {
	}

	public Optional<FeedDocument> document(FeedId feed) {
		return this.database
			.sql("select octets, packed, etag, last_modified from feeds.feed_document where feed_id = ?")
			.param(feed.value())
			.query((row, number) -> new FeedDocument(row.getBytes("octets"), row.getBytes("packed"),
					row.getString("etag"), row.getObject("last_modified", OffsetDateTime.class).toInstant()))
			.optional();
	}

	public Optional<Claimed> unrevoked(FeedId feed) {
		return this.database
			.sql(CLAIMED
					+ "left join feeds.feed_document d on d.feed_id = f.id where f.id = ? and f.revoked_at is null")
			.param(feed.value())
			.query(DocumentTable::claimed)
			.optional();
	}

	/**
	 * Marks documents stale and locks them for this transaction, in one order everywhere.
	 * @param site the site whose tasks changed
	 * @param person whose site it is
	 * @return the documents that show the site
	 */
	public List<Claimed> markStale(UUID site, UUID person) {
		List<Claimed> found = this.database.sql(CLAIMED + """
				join feeds.feed_document d on d.feed_id = f.id
				where f.revoked_at is null
				and (f.kind = 'SITE' and f.what = ? or f.kind = 'PERSON' and f.what = ?)
				order by d.feed_id for update of d
				""").params(site, person).query(DocumentTable::claimed).list();
		if (!found.isEmpty()) {
			this.database.sql("update feeds.feed_document set stale = true where feed_id in (:feeds)")
				.param("feeds", found.stream().map((each) -> each.id().value()).toList())
				.update();
		}
		return found;
	}

	public void markStale(FeedId feed) {
		this.database.sql("update feeds.feed_document set stale = true where feed_id = ?").param(feed.value()).update();
	}

	/**
	 * Locks the next document to build, leaving those that another transaction works on.
	 * @param today documents built for a day before are due
	 * @param now documents that failed wait for their time
	 * @return empty when nothing is due
	 */
	public Optional<Claimed> claimStale(LocalDate today, Instant now) {
		return this.database.sql(CLAIMED + """
				join feeds.feed_document d on d.feed_id = f.id
				where f.revoked_at is null and (d.stale or d.built_for < ?)
				and (d.retry_at is null or d.retry_at <= ?)
				order by d.built_at limit 1 for update of d skip locked
				""").params(today, FeedTable.utc(now)).query(DocumentTable::claimed).optional();
	}

	public void retry(FeedId feed, Instant at) {
		this.database.sql("update feeds.feed_document set retry_at = ? where feed_id = ?")
			.params(FeedTable.utc(at), feed.value())
			.update();
	}

	/**
	 * Notes that the document is still right.
	 * @param feed the feed
	 * @param day the day it was built for, UTC
	 * @param at when
	 */
	public void keep(FeedId feed, LocalDate day, Instant at) {
		this.database.sql("""
				update feeds.feed_document set stale = false, built_for = ?, built_at = ?, retry_at = null
				where feed_id = ?
				""").params(day, FeedTable.utc(at), feed.value()).update();
	}

	public void store(Built built) {
		FeedDocument document = built.document();
		this.database.sql("""
				insert into feeds.feed_document
				(feed_id, octets, packed, etag, last_modified, stale, built_for, built_at)
				values (?, ?, ?, ?, ?, false, ?, ?)
				on conflict (feed_id) do update set octets = excluded.octets, packed = excluded.packed,
				etag = excluded.etag, last_modified = excluded.last_modified, stale = false,
				built_for = excluded.built_for, built_at = excluded.built_at, retry_at = null
				""")
			.params(built.feed().value(), document.octets(), document.packed(), document.etag(),
					FeedTable.utc(document.lastModified()), built.day(), FeedTable.utc(built.at()))
			.update();
	}

	private static Claimed claimed(ResultSet row, int number) throws SQLException {
		Instant built = FeedTable.instant(row, "built_at");
		return new Claimed(new FeedId(row.getObject("id", UUID.class)), FeedKind.valueOf(row.getString("kind")),
				row.getObject("what", UUID.class),
				FeedLife.of(row.getObject("created_at", OffsetDateTime.class).toInstant(),
						FeedTable.instant(row, "last_fetched_at")),
				row.getString("etag"), FeedTable.instant(row, "last_modified"),
				(built != null) ? built : Instant.EPOCH);
	}

}
