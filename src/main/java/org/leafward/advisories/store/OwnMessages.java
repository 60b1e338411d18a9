package org.leafward.advisories.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * What is kept about those who wrote advisories. What was sent stays for those who were
 * told, and loses the name.
 */
@Component
class OwnMessages implements PersonalData {

	private final JdbcClient database;

	OwnMessages(JdbcClient database) {
		this.database = database;
	}

	@Override
	public int order() {
		return 25;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		all.put("advisories-written",
				this.database
					.sql("""
							select id, advisory, number, type, sent_at as "sentAt", (written_by = :person) as "wroteIt",
								coalesce(approved_by = :person, false) as "approvedIt", content -> 'english' ->> 'headline' as headline
							from advisories.message where written_by = :person or approved_by = :person order by seq
							""")
					.param("person", person.value())
					.query(Rows::plain)
					.list());
		all.put("advisory-drafts", this.database.sql("""
				select id, type, state, changed_at as "changedAt", fields::text as fields
				from advisories.draft where written_by = :person or approved_by = :person order by changed_at, id
				""").param("person", person.value()).query(Rows::plain).list());
		return all;
	}

	@Override
	public void forget(PersonId person) {
		rename(person, null);
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		rename(from, into);
	}

	private void rename(PersonId from, @Nullable PersonId into) {
		for (String table : List.of("message", "draft")) {
			for (String column : List.of("written_by", "approved_by")) {
				this.database
					.sql("update advisories.%s set %s = :into where %s = :from".formatted(table, column, column))
					.param("into", (into != null) ? into.value() : null)
					.param("from", from.value())
					.update();
			}
		}
	}

}
