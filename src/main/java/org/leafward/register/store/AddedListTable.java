package org.leafward.register.store;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which lists of plantings were added, so that none is added twice. */
@Repository
public class AddedListTable {

	/** Nobody presses a button again after that. */
	private static final Duration KEPT = Duration.ofDays(30);

	private final JdbcClient database;

	AddedListTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Takes the key of a form. Whoever comes at the same time waits for the end of this
	 * transaction.
	 * @param site the site
	 * @param key the key
	 * @param digest SHA-256 of the list
	 * @param at when
	 * @return false when it was taken before
	 */
	public boolean claim(SiteId site, UUID key, byte[] digest, Instant at) {
		this.database.sql("delete from register.added_list where site = ? and added_at < ?")
			.params(site.value(), at.minus(KEPT).atOffset(ZoneOffset.UTC))
			.update();
		return this.database.sql("""
				insert into register.added_list (site, form_key, digest, added_at) values (?, ?, ?, ?)
				on conflict do nothing
				""").params(site.value(), key, digest, at.atOffset(ZoneOffset.UTC)).update() == 1;
	}

	/**
	 * Whether a list was added under a key.
	 * @param site the site
	 * @param key the key
	 * @param digest SHA-256 of the list
	 * @return false for another list
	 */
	public boolean isOf(SiteId site, UUID key, byte[] digest) {
		return this.database
			.sql("select count(*) from register.added_list where site = ? and form_key = ? and digest = ?")
			.params(site.value(), key, digest)
			.query(Long.class)
			.single() == 1;
	}

}
