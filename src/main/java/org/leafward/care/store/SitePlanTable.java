package org.leafward.care.store;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was last planned for each site, as a fingerprint, and the locks for planning. */
@Repository
public class SitePlanTable {

	/** Held together by those who plan, alone by the one who tidies up. */
	private static final long TIDY = 4041;

	private final JdbcClient database;

	private final JdbcTemplate batches;

	SitePlanTable(JdbcClient database, JdbcTemplate batches) {
		this.database = database;
		this.batches = batches;
	}

	/**
	 * Lets one transaction at a time plan a site, on whatever node, and none while unused
	 * words are forgotten.
	 * @param sites the sites; nothing else may be locked before in this transaction
	 */
	public void lock(Collection<SiteId> sites) {
		this.database.sql("select pg_advisory_xact_lock_shared(?)").param(TIDY).query((row, number) -> number).list();
		// Sorted, so that two nodes never wait for each other.
		this.database.sql("""
				select pg_advisory_xact_lock(hashtextextended('care.plan ' || site, 40))
				from (select unnest(?::uuid[]) as site) as sites
				""").param(array(sites)).query((row, number) -> number).list();
	}

	/**
	 * Waits until nobody plans, and keeps everybody from it until the transaction ends.
	 */
	public void lockAll() {
		this.database.sql("select pg_advisory_xact_lock(?)").param(TIDY).query((row, number) -> number).list();
	}

	private static UUID[] array(Collection<SiteId> sites) {
		return sites.stream().map(SiteId::value).sorted().toArray(UUID[]::new);
	}

	/**
	 * Fingerprints of a plan.
	 *
	 * @param hash of what was planned
	 * @param inputs of what it was made from; null when that was not noted
	 */
	public record Made(byte[] hash, byte @Nullable [] inputs) {
	}

	/**
	 * The fingerprints of the plans last written.
	 * @param sites the sites
	 * @return without those that were never planned
	 */
	public Map<SiteId, Made> of(Collection<SiteId> sites) {
		Map<SiteId, Made> made = new HashMap<>();
		this.database.sql("select site, hash, inputs from care.site_plan where site = any(?::uuid[])")
			.param(array(sites))
			.query((row) -> {
				made.put(new SiteId(row.getObject(1, UUID.class)), new Made(row.getBytes(2), row.getBytes(3)));
			});
		return made;
	}

	/**
	 * When sites were last derived.
	 * @param sites the sites
	 * @return without those that never were
	 */
	public Map<SiteId, Instant> derived(Collection<SiteId> sites) {
		Map<SiteId, Instant> times = new HashMap<>();
		this.database.sql("select site, at from care.site_plan where site = any(?::uuid[])")
			.param(array(sites))
			.query((row) -> {
				times.put(new SiteId(row.getObject(1, UUID.class)), row.getObject(2, OffsetDateTime.class).toInstant());
			});
		return times;
	}

	/**
	 * Notes what was planned.
	 * @param plans fingerprints by site
	 * @param at when
	 */
	public void note(Map<SiteId, Made> plans, Instant at) {
		List<@Nullable Object[]> rows = new ArrayList<>();
		plans.forEach((site, made) -> rows
			.add(new @Nullable Object[] { site.value(), made.hash(), made.inputs(), at.atOffset(ZoneOffset.UTC) }));
		this.batches.batchUpdate("""
				insert into care.site_plan (site, hash, inputs, at) values (?, ?, ?, ?)
				on conflict (site) do update set hash = excluded.hash, inputs = excluded.inputs, at = excluded.at
				""", rows);
	}

	/**
	 * Notes that sites were looked at and need no other plan.
	 * @param sites the sites
	 * @param at when
	 */
	public void noteSame(Collection<SiteId> sites, Instant at) {
		if (!sites.isEmpty()) {
			this.database.sql("update care.site_plan set at = ? where site = any(?::uuid[])")
				.params(at.atOffset(ZoneOffset.UTC), array(sites))
				.update();
		}
	}

	/**
	 * Forgets what was planned for a site, so that the next derivation compares it task
	 * by task.
	 * @param site the site
	 */
	public void forget(SiteId site) {
		this.database.sql("delete from care.site_plan where site = ?").param(site.value()).update();
	}

	/**
	 * How many sites were derived.
	 * @param since from then on
	 * @return 0 or more
	 */
	public long derivedSince(Instant since) {
		return this.database.sql("select count(*) from care.site_plan where at >= ?")
			.param(since.atOffset(ZoneOffset.UTC))
			.query(Long.class)
			.single();
	}

}
