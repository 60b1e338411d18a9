package org.leafward.reminders.store;

import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The browsers that a person gets messages on. Their addresses and keys are secrets. */
@Component
class OwnPush implements PersonalData {

	private final PushTable table;

	private final JdbcClient database;

	OwnPush(PushTable table, JdbcClient database) {
		this.table = table;
		this.database = database;
	}

	@Override
	public int order() {
		return 10;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		return Map.of("push-messages", this.database.sql("""
				select label, substring(endpoint from '^[a-zA-Z]+://([^/?]+)') as "service", created_at as "createdAt",
					last_ok_at as "lastTakenAt"
				from reminders.push_subscription where person_id = ? order by created_at, id""")
			.param(person.value())
			.query(Rows::plain)
			.list());
	}

	@Override
	public void forget(PersonId person) {
		this.table.forget(person);
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		this.table.handOver(from, into);
	}

}
