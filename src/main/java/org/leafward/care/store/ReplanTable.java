package org.leafward.care.store;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
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
	 * Takes one due site off the queue. The row stays locked until the transaction ends,
	 * so other nodes pass it by, and comes back when the transaction fails.
	 * @param at now
	 * @return the site, or nothing
	 */
	public List<SiteId> take(Instant at) {
		return this.database.sql("""
				delete from care.replan where site = (
					select site from care.replan where not_before <= ? order by asked_at, site
					limit 1 for update skip locked)
				returning site
				""")
			.param(at.atOffset(ZoneOffset.UTC))
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
	 * The oldest due site; it is not locked.
	 * @param at now
	 * @return the site, or nothing
	 */
	public List<SiteId> peek(Instant at) {
		return this.database.sql("select site from care.replan where not_before <= ? order by asked_at, site limit 1")
			.param(at.atOffset(ZoneOffset.UTC))
			.query((row, number) -> new SiteId(row.getObject(1, UUID.class)))
			.list();
	}

}
