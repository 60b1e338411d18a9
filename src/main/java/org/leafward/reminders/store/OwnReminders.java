package org.leafward.reminders.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The reminders of a person, and every mail to them. */
@Component
class OwnReminders implements PersonalData {

	private final JdbcClient database;

	OwnReminders(JdbcClient database) {
		this.database = database;
	}

	@Override
	public int order() {
		return 10;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		all.put("reminders", this.database.sql("""
				select task_id as "task", first_day as "firstDay", due_at as "dueAt", state, last_error as "lastError"
				from reminders.reminder where person_id = ? order by due_at, id""")
			.param(person.value())
			.query(Rows::plain)
			.list());
		all.put("mails", this.database.sql("""
				select created_at as "createdAt", sent_at as "sentAt", state, recipient, subject, body_text as "text"
				from reminders.mail where person_id = ? order by created_at, id""")
			.param(person.value())
			.query(Rows::plain)
			.list());
		return all;
	}

	@Override
	public void forget(PersonId person) {
		this.database.sql("delete from reminders.reminder where person_id = ?").param(person.value()).update();
		this.database.sql("delete from reminders.mail where person_id = ?").param(person.value()).update();
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		// Who had no address got no mail; the other's reminders are made anew from the
		// tasks.
		forget(from);
	}

}
