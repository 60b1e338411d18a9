package org.leafward.accounts.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What accounts keeps about a person. */
@Component
class OwnAccount implements PersonalData {

	private final JdbcClient database;

	OwnAccount(JdbcClient database) {
		this.database = database;
	}

	@Override
	public int order() {
		return 50;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		all.put("account", rows("""
				select id, name, email, zone, created_at as "createdAt", confirmed_at as "confirmedAt"
				from accounts.person where id = ?""", person));
		all.put("roles", rows("""
				select role, county, granted_at as "grantedAt" from accounts.role where person = ?
				order by role, county""", person));
		all.put("sessions",
				rows("""
						select to_timestamp(creation_time / 1000) as "since", to_timestamp(last_access_time / 1000) as "lastUsed"
						from accounts.session where principal_name = ?::uuid::text order by creation_time""",
						person));
		all.put("tokens", rows("""
				select name, scopes, created_at as "createdAt", expires_at as "expiresAt", last_used_at as "lastUsedAt",
					revoked_at as "revokedAt" from accounts.token where person = ? order by created_at, id""", person));
		all.put("audit", rows("""
				select at, deed, what, (actor = ?) is true as "byYou" from accounts.audit
				where actor = ? or concerns = ? order by id""", person, person, person));
		return all;
	}

	private List<Map<String, Object>> rows(String query, PersonId... people) {
		JdbcClient.StatementSpec statement = this.database.sql(query);
		for (PersonId person : people) {
			statement = statement.param(person.value());
		}
		return statement.query(Rows::plain).list();
	}

	@Override
	public void forget(PersonId person) {
		this.database.sql("delete from accounts.session where principal_name = ?").param(person.toString()).update();
		this.database.sql("""
				delete from accounts.one_time_link link using accounts.person person
				where person.id = ? and lower(link.email) = lower(person.email)""").param(person.value()).update();
		// Roles and tokens go with it; the audit log loses the name.
		this.database.sql("delete from accounts.person where id = ?").param(person.value()).update();
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		this.database.sql("update accounts.audit set actor = ? where actor = ?")
			.params(into.value(), from.value())
			.update();
		this.database.sql("update accounts.audit set concerns = ? where concerns = ?")
			.params(into.value(), from.value())
			.update();
	}

}
