package org.leafward.reminders.store;

import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * The webhook of a person. What is taken away says that there is one; neither its secret
 * nor its address, which may hold a secret of the other server.
 */
@Component
class OwnWebhook implements PersonalData {

	private final JdbcClient database;

	OwnWebhook(JdbcClient database) {
		this.database = database;
	}

	@Override
	public int order() {
		return 10;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		return Map.of("webhooks", this.database.sql("""
				select created_at as "createdAt", disabled_at as "disabledAt", last_ok_at as "lastTakenAt"
				from reminders.webhook where person_id = ?""").param(person.value()).query(Rows::plain).list());
	}

	@Override
	public void forget(PersonId person) {
		for (String table : List.of("webhook", "webhook_trial")) {
			this.database.sql("delete from reminders.%s where person_id = ?".formatted(table))
				.param(person.value())
				.update();
		}
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		this.database.sql("""
				update reminders.webhook set person_id = :into where person_id = :from
				and not exists (select 1 from reminders.webhook where person_id = :into)
				""").param("from", from.value()).param("into", into.value()).update();
		forget(from);
	}

}
