package org.leafward.accounts.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalToken;
import org.leafward.accounts.Scope;
import org.leafward.accounts.Secret;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Personal tokens. */
@Repository
public class TokenTable {

	private final JdbcClient database;

	TokenTable(JdbcClient database) {
		this.database = database;
	}

	/**
	 * Adds a token.
	 * @param token what is known of it
	 * @param secret the token itself, of which the hash is kept
	 */
	public void add(PersonalToken token, String secret) {
		this.database.sql("""
				insert into accounts.token (id, person, name, hash, scopes, created_at, expires_at)
				values (?, ?, ?, ?, ?, ?, ?)
				""")
			.params(token.id(), token.person().value(), token.name(), Secret.hash(secret), codes(token.scopes()),
					time(token.createdAt()), time(token.expiresAt()))
			.update();
	}

	/**
	 * The token with a secret, whether it still works or not.
	 * @param secret what somebody says is a token
	 * @return empty when there is none
	 */
	public Optional<PersonalToken> withSecret(String secret) {
		return this.database.sql("select * from accounts.token where hash = ?")
			.param(Secret.hash(secret))
			.query(TokenTable::token)
			.optional();
	}

	public Optional<PersonalToken> find(UUID id) {
		return this.database.sql("select * from accounts.token where id = ?")
			.param(id)
			.query(TokenTable::token)
			.optional();
	}

	/**
	 * Tokens, newest first.
	 * @param person whose; null for everybody's
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<PersonalToken> list(@Nullable PersonId person, int page, int size) {
		return this.database.sql("""
				select * from accounts.token where cast(:person as uuid) is null or person = :person
				order by created_at desc, id limit :size offset :from
				""")
			.param("person", (person != null) ? person.value() : null)
			.param("size", size)
			.param("from", (long) page * size)
			.query(TokenTable::token)
			.list();
	}

	/**
	 * How many tokens of a person work.
	 * @param person who
	 * @param now the time
	 * @return from 0
	 */
	public int working(PersonId person, Instant now) {
		return this.database
			.sql("select count(*) from accounts.token where person = ? and revoked_at is null and expires_at > ?")
			.params(person.value(), time(now))
			.query(Integer.class)
			.single();
	}

	/**
	 * Notes that a token was used.
	 * @param id which
	 * @param at when
	 * @param unlessSince nothing is written when it was used since then
	 */
	public void used(UUID id, Instant at, Instant unlessSince) {
		this.database.sql("""
				update accounts.token set last_used_at = ?
				where id = ? and (last_used_at is null or last_used_at < ?)
				""").params(time(at), id, time(unlessSince)).update();
	}

	/**
	 * Ends a token.
	 * @param id which
	 * @param at when
	 * @return false when somebody ended it before
	 */
	public boolean revoke(UUID id, Instant at) {
		return this.database.sql("update accounts.token set revoked_at = ? where id = ? and revoked_at is null")
			.params(time(at), id)
			.update() == 1;
	}

	/**
	 * Takes away the rows of a person's tokens that ended long ago.
	 * @param person whose
	 * @param before when they ended
	 */
	public void tidy(PersonId person, Instant before) {
		this.database.sql("delete from accounts.token where person = ? and least(expires_at, revoked_at) < ?")
			.params(person.value(), time(before))
			.update();
	}

	/**
	 * Takes away all tokens of a person.
	 * @param person whose
	 */
	public void forget(PersonId person) {
		this.database.sql("delete from accounts.token where person = ?").param(person.value()).update();
	}

	private static OffsetDateTime time(Instant instant) {
		return instant.atOffset(ZoneOffset.UTC);
	}

	private static String codes(Set<Scope> scopes) {
		return scopes.stream().sorted().map(Scope::code).collect(Collectors.joining(" "));
	}

	private static PersonalToken token(ResultSet row, int number) throws SQLException {
		Set<Scope> scopes = Arrays.stream(row.getString("scopes").split(" "))
			.map((one) -> Scope.valueOf(one.toUpperCase(Locale.ROOT)))
			.collect(Collectors.toSet());
		return new PersonalToken(row.getObject("id", UUID.class), new PersonId(row.getObject("person", UUID.class)),
				row.getString("name"), scopes, row.getObject("created_at", OffsetDateTime.class).toInstant(),
				row.getObject("expires_at", OffsetDateTime.class).toInstant(), instant(row, "last_used_at"),
				instant(row, "revoked_at"));
	}

	private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
		OffsetDateTime at = row.getObject(column, OffsetDateTime.class);
		return (at != null) ? at.toInstant() : null;
	}

}
