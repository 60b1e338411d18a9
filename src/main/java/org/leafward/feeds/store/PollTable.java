package org.leafward.feeds.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.FeedForm;
import org.leafward.feeds.core.FeedLife;
import org.leafward.feeds.core.PollIndex.Answer;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import org.springframework.stereotype.Repository;

/** Feeds as those who poll see them. */
@Repository
public class PollTable {

	/** On which the triggers of V0053 tell of changes. */
	public static final String CHANNEL = "leafward_feeds";

	private static final String ANSWERS = """
			select f.token_hash, f.revoked_at is not null as revoked, f.expired, o.form, d.etag, d.last_modified
			from feeds.feed f cross join (values ('EVENTS'), ('TODOS')) as o (form)
			left join feeds.feed_document d on d.feed_id = f.id and d.form = o.form
			""";

	private static final int ROWS_AT_ONCE = 5_000;

	/** Programs that ask less often than that say nothing about when they ask next. */
	private static final Duration LONGEST = Duration.ofDays(8);

	private final JdbcTemplate rows;

	private final JdbcClient database;

	PollTable(JdbcTemplate rows) {
		this.rows = new JdbcTemplate(Objects.requireNonNull(rows.getDataSource()));
		this.rows.setFetchSize(ROWS_AT_ONCE);
		this.database = JdbcClient.create(rows);
	}

	/**
	 * The same table over one connection.
	 * @param connection open as long as the table is used
	 * @return for whoever must not wait for a connection
	 */
	public PollTable over(Connection connection) {
		return new PollTable(new JdbcTemplate(new SingleConnectionDataSource(connection, true)));
	}

	/**
	 * What an address answers.
	 *
	 * @param hash SHA-256 of its token
	 * @param form in which form
	 * @param answer null while it has no document in this form
	 */
	public record Row(byte[] hash, FeedForm form, @Nullable Answer answer) {
	}

	/**
	 * Tells all addresses, in pieces, within a transaction.
	 * @param to who is told
	 */
	public void all(Consumer<Row> to) {
		this.rows.query(ANSWERS, (RowCallbackHandler) (row) -> to.accept(answer(row, 0)));
	}

	/**
	 * Some of the addresses.
	 * @param feeds identifiers
	 * @return those that there are, in both forms
	 */
	public List<Row> of(Collection<UUID> feeds) {
		return this.database.sql(ANSWERS + "where f.id = any(?)")
			.param(feeds.toArray(UUID[]::new))
			.query(PollTable::answer)
			.list();
	}

	private static Row answer(ResultSet row, int number) throws SQLException {
		byte[] hash = row.getBytes("token_hash");
		FeedForm form = FeedForm.valueOf(row.getString("form"));
		if (row.getBoolean("revoked")) {
			return new Row(hash, form, Answer.dead(row.getBoolean("expired")));
		}
		String etag = row.getString("etag");
		if (etag == null) {
			return new Row(hash, form, null);
		}
		Instant modified = row.getObject("last_modified", OffsetDateTime.class).toInstant();
		return new Row(hash, form, Answer.living(HexFormat.of().parseHex(etag), modified.getEpochSecond()));
	}

	/**
	 * Tells all nodes something, at the end of the caller's transaction where there is
	 * one.
	 * @param what at most 8,000 octets
	 */
	public void tell(String what) {
		this.database.sql("select pg_notify('" + CHANNEL + "', ?)").param(what).query((row) -> {
		});
	}

	/** What was known of a feed when it was asked again. */
	private record Asked(UUID feed, FeedLife life, @Nullable Instant before) {
	}

	/**
	 * Notes that calendars were asked for, and when their programs are likely to ask
	 * again. A calendar that had said that it ends is to be built anew.
	 * @param hashes SHA-256 of their tokens
	 * @param at when
	 */
	public void noteFetches(List<byte[]> hashes, Instant at) {
		List<Asked> found = this.database.sql("""
				select id, created_at, last_fetched_at from feeds.feed
				where token_hash = any(?) and revoked_at is null order by id for update
				""").param(hashes.toArray(byte[][]::new)).query((row, number) -> {
			Instant before = FeedTable.instant(row, "last_fetched_at");
			return new Asked(row.getObject("id", UUID.class),
					FeedLife.of(row.getObject("created_at", OffsetDateTime.class).toInstant(), before), before);
		}).list();
		if (found.isEmpty()) {
			return;
		}
		this.rows.batchUpdate(
				"""
						update feeds.feed set last_fetched_at = ?, polled_every = coalesce(?::interval, polled_every) where id = ?
						""",
				found.stream().map((one) -> new Object[] { FeedTable.utc(at), every(one, at), one.feed() }).toList());
		UUID[] feeds = found.stream().map(Asked::feed).toArray(UUID[]::new);
		// In the order of everybody else who locks several, or two would wait for each
		// other.
		this.database.sql("""
				select from feeds.feed_document where feed_id = any(?) order by feed_id, form for update
				""").param(feeds).query((row) -> {
		});
		this.database
			.sql("""
					update feeds.feed_document d set next_poll = f.last_fetched_at + coalesce(f.polled_every, interval '1 day')
					from feeds.feed f where f.id = d.feed_id and d.feed_id = any(?)
					""")
			.param(feeds)
			.update();
		UUID[] announced = found.stream()
			.filter((one) -> one.life().announcedOn(LocalDate.ofInstant(at, ZoneOffset.UTC)))
			.map(Asked::feed)
			.toArray(UUID[]::new);
		if (announced.length > 0) {
			// They say that they end, and now they don't.
			this.database.sql("update feeds.feed_document set stale = true where feed_id = any(?)")
				.param(announced)
				.update();
		}
	}

	private static @Nullable String every(Asked one, Instant at) {
		if (one.before() == null) {
			return null;
		}
		Duration since = Duration.between(one.before(), at);
		return (since.isNegative() || since.compareTo(LONGEST) > 0) ? null : since.toSeconds() + " seconds";
	}

}
