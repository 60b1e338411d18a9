package org.leafward.accounts.store;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Secret;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Links that work once. */
@Repository
public class LinkTable {

	private final JdbcClient database;

	LinkTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * A link that was followed.
	 *
	 * @param email to which it was sent
	 * @param person who adds the address to what they have; null when it is a sign-in
	 */
	public record Followed(String email, @Nullable PersonId person) {
	}

	/**
	 * Adds a link, and takes away those that have ended.
	 * @param secret what stands in it
	 * @param email to which it goes
	 * @param person who adds the address; null when it is a sign-in
	 * @param now the time
	 * @param expires until when it works
	 */
	public void add(String secret, String email, @Nullable PersonId person, Instant now, Instant expires) {
		this.database.sql("delete from accounts.one_time_link where expires_at < ?")
			.param(now.atOffset(ZoneOffset.UTC))
			.update();
		this.database
			.sql("insert into accounts.one_time_link (token_hash, email, person, expires_at) values (?, ?, ?, ?)")
			.param(Secret.hash(secret))
			.param(email)
			.param((person != null) ? person.value() : null)
			.param(expires.atOffset(ZoneOffset.UTC))
			.update();
	}

	/**
	 * Uses a link up.
	 * @param secret what stands in it
	 * @param now the time
	 * @return empty when there is none, it has ended, or somebody was faster
	 */
	public Optional<Followed> take(String secret, Instant now) {
		return this.database
			.sql("delete from accounts.one_time_link where token_hash = ? and expires_at >= ? returning email, person")
			.params(Secret.hash(secret), now.atOffset(ZoneOffset.UTC))
			.query((row, number) -> {
				UUID person = row.getObject("person", UUID.class);
				return new Followed(row.getString("email"), (person != null) ? new PersonId(person) : null);
			})
			.optional();
	}

}
