package org.leafward.care.store;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.ReplanFailure;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The queue of sites to derive again. A site stands in it once, however often it is asked
 * for.
 */
@Repository
public class ReplanTable {

	private final JdbcClient database;

	private final JdbcTemplate batches;

	ReplanTable(JdbcClient database, JdbcTemplate batches) {
		this.database = database;
		this.batches = batches;
	}

	/**
	 * Asks for sites to be derived again.
	 * @param sites the sites
	 * @param at now
	 */
	public void ask(Collection<SiteId> sites, Instant at) {
		this.batches.batchUpdate("""
				insert into care.replan (site, asked_at, not_before) values (?, ?, ?)
				on conflict (site) do update set asked_at = excluded.asked_at, not_before = excluded.not_before,
					attempts = 0
				""",
				sites.stream()
					.map(SiteId::value)
					.sorted()
					.map((site) -> new Object[] { site, at.atOffset(ZoneOffset.UTC), at.atOffset(ZoneOffset.UTC) })
					.toList());
	}

	/**
	 * Takes due sites off the queue, oldest first. Their rows stay locked until the
	 * transaction ends, so other nodes pass them by, and come back when the transaction
	 * fails or its node dies.
	 * @param at now
	 * @param most how many at most
	 * @return the sites, or nothing
	 */
	public List<SiteId> take(Instant at, int most) {
		return this.database.sql("""
				delete from care.replan where site = any(array(
					select site from care.replan where not_before <= ? order by asked_at, site
					limit ? for update skip locked))
				returning site
				""")
			.params(at.atOffset(ZoneOffset.UTC), most)
			.query((row, number) -> new SiteId(row.getObject(1, UUID.class)))
			.list();
	}

	/**
	 * Puts off a site whose derivation failed.
	 * @param site the site
	 * @param until when to try again
	 * @param error what went wrong
	 */
	public void putOff(SiteId site, Instant until, String error) {
		this.database
			.sql("update care.replan set not_before = ?, attempts = attempts + 1, last_error = ? where site = ?")
			.params(until.atOffset(ZoneOffset.UTC), error, site.value())
			.update();
	}

	/**
	 * How far the queue is.
	 * @return depth, oldest question, failures
	 */
	public Depth depth() {
		return this.database
			.sql("""
					select count(*) as depth, min(asked_at) as oldest, count(*) filter (where attempts > 0) as failing,
						(select last_error from care.replan where attempts > 0 order by not_before desc, site limit 1) as error
					from care.replan
					""")
			.query((row, number) -> {
				OffsetDateTime oldest = row.getObject("oldest", OffsetDateTime.class);
				return new Depth(row.getLong("depth"), (oldest != null) ? oldest.toInstant() : null,
						row.getLong("failing"), row.getString("error"));
			})
			.single();
	}

	/**
	 * Sites whose derivation failed, next to be tried first.
	 * @param most how many at most
	 * @return never null
	 */
	public List<ReplanFailure> failures(int most) {
		return this.database.sql("""
				select site, attempts, not_before, last_error from care.replan where attempts > 0
				order by not_before, site limit ?
				""")
			.param(most)
			.query((row, number) -> new ReplanFailure(new SiteId(row.getObject("site", UUID.class)),
					row.getInt("attempts"), String.valueOf(row.getString("last_error")),
					row.getObject("not_before", OffsetDateTime.class).toInstant()))
			.list();
	}

	/**
	 * How far the queue is.
	 *
	 * @param sites how many sites stand in it
	 * @param oldest since when the oldest has been asked for; null when there are none
	 * @param failing how many of them failed at least once
	 * @param lastError what went wrong with one of those; null when none failed
	 */
	public record Depth(long sites, @Nullable Instant oldest, long failing, @Nullable String lastError) {
	}

}
