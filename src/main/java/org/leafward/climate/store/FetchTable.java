package org.leafward.climate.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Reads and writes {@code climate.fetch_state}. A node fetches under a claim that nobody
 * else has and that ends by itself, so that one node's death holds nothing up; a node
 * that comes back late can't undo what another noted. Every comparison with time uses the
 * instant that is passed in, never the database's.
 */
@Component
public class FetchTable {

	private static final int LONGEST_ERROR = 500;

	private static final String COLUMNS = "source, key, last_try_at, last_ok_at, failures, next_try_at, last_error, reached";

	private final JdbcClient jdbc;

	FetchTable(JdbcClient jdbc) {
		this.jdbc = jdbc;
	}

	/**
	 * Claims a place of a source.
	 * @param source name of the source
	 * @param key the place
	 * @param now the time
	 * @param until when the claim ends by itself
	 * @param token name of the claim
	 * @param early whether to claim even before the next try is due
	 * @return the state, or empty when it isn't due or another node has it
	 */
	public Optional<FetchState> claim(String source, String key, Instant now, Instant until, UUID token,
			boolean early) {
		this.jdbc.sql("""
				insert into climate.fetch_state (source, key, next_try_at) values (:source, :key, :now)
				on conflict do nothing""").param("source", source).param("key", key).param("now", time(now)).update();
		return this.jdbc.sql("""
				update climate.fetch_state set claimed_by = :token, claimed_until = :until, last_try_at = :now
				where source = :source and key = :key and (claimed_until is null or claimed_until <= :now)
					and (:early or next_try_at <= :now)
				returning\s""" + COLUMNS)
			.param("source", source)
			.param("key", key)
			.param("now", time(now))
			.param("until", time(until))
			.param("token", token)
			.param("early", early)
			.query(FetchTable::row)
			.optional();
	}

	/**
	 * Notes how far the record has been read.
	 * @param token name of the claim
	 * @param day the day
	 */
	public void reached(UUID token, LocalDate day) {
		this.jdbc.sql("update climate.fetch_state set reached = :day where claimed_by = :token")
			.param("day", day)
			.param("token", token)
			.update();
	}

	/**
	 * Ends a claim with success.
	 * @param token name of the claim
	 * @param now the time
	 * @param next when to ask again
	 */
	public void succeeded(UUID token, Instant now, Instant next) {
		this.jdbc.sql("""
				update climate.fetch_state set claimed_by = null, claimed_until = null, last_ok_at = :now, failures = 0,
					last_error = null, next_try_at = :next
				where claimed_by = :token""")
			.param("now", time(now))
			.param("next", time(next))
			.param("token", token)
			.update();
	}

	/**
	 * Ends a claim with a failure.
	 * @param token name of the claim
	 * @param next when to ask again
	 * @param error why, cut off at 500 characters
	 */
	public void failed(UUID token, Instant next, String error) {
		this.jdbc.sql("""
				update climate.fetch_state set claimed_by = null, claimed_until = null, failures = failures + 1,
					last_error = :error, next_try_at = :next
				where claimed_by = :token""")
			.param("error", error.substring(0, Math.min(error.length(), LONGEST_ERROR)).replace('\0', ' '))
			.param("next", time(next))
			.param("token", token)
			.update();
	}

	/**
	 * Everything known of a source.
	 * @param source name of the source
	 * @return in no order
	 */
	public List<FetchState> of(String source) {
		return this.jdbc.sql("select " + COLUMNS + " from climate.fetch_state where source = :source")
			.param("source", source)
			.query(FetchTable::row)
			.list();
	}

	/**
	 * What is known of a source at a place.
	 * @param source name of the source
	 * @param key the place
	 * @return empty when it was never asked
	 */
	public Optional<FetchState> find(String source, String key) {
		return this.jdbc.sql("select " + COLUMNS + " from climate.fetch_state where source = :source and key = :key")
			.param("source", source)
			.param("key", key)
			.query(FetchTable::row)
			.optional();
	}

	private static FetchState row(ResultSet row, int number) throws SQLException {
		Instant next = instant(row, "next_try_at");
		return new FetchState(row.getString("source"), row.getString("key"), instant(row, "last_try_at"),
				instant(row, "last_ok_at"), row.getInt("failures"), (next != null) ? next : Instant.EPOCH,
				row.getString("last_error"), row.getObject("reached", LocalDate.class));
	}

	static OffsetDateTime time(Instant instant) {
		return instant.atOffset(ZoneOffset.UTC);
	}

	static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
		OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
		return (time != null) ? time.toInstant() : null;
	}

}
