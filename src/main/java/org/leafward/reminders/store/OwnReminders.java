package org.leafward.reminders.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The reminders of a person, every message to them, and how they want to be told. */
@Component
class OwnReminders implements PersonalData {

	private static final List<String> OF_PEOPLE = List.of("reminder", "message", "stopped", "wish", "wishes");

	/** An address is nobody's here, but mails tell whose it is. */
	private static final String SILENT = "reminders.suppressed where address in ("
			+ "select lower(recipient) from reminders.message where person_id = ? and channel = 'mail')";

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
		all.put("reminders",
				this.database
					.sql("""
							select channel, topic, task_id as "task", first_day as "firstDay", due_at as "dueAt", state, last_error as "lastError"
							from reminders.reminder where person_id = ? order by due_at, id""")
					.param(person.value())
					.query(Rows::plain)
					.list());
		all.put("messages",
				this.database
					.sql("""
							select created_at as "createdAt", sent_at as "sentAt", channel, state, recipient, subject, body_text as "text"
							from reminders.message where person_id = ? order by created_at, id""")
					.param(person.value())
					.query(Rows::plain)
					.list());
		all.put("addresses-at-which-nobody-is",
				this.database.sql("select address, reason, since from " + SILENT)
					.param(person.value())
					.query(Rows::plain)
					.list());
		all.putAll(wishes(person));
		return all;
	}

	private Map<String, List<Map<String, Object>>> wishes(PersonId person) {
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		all.put("how-to-tell", this.database.sql("""
				select language, units, morning, outlook_day as "outlookDay", quiet_from as "quietFrom",
					quiet_to as "quietTo", urgent_anyway as "urgentAnyway", paused_until as "pausedUntil"
				from reminders.wishes where person_id = ?""").param(person.value()).query(Rows::plain).list());
		all.put("what-to-tell",
				this.database.sql("""
						select channel, topic, manner, lead_days as "leadDays"
						from reminders.wish where person_id = ? order by channel, topic""")
					.param(person.value())
					.query(Rows::plain)
					.list());
		all.put("left-series",
				this.database.sql("""
						select channel, series, since
						from reminders.stopped where person_id = ? order by channel, series""")
					.param(person.value())
					.query(Rows::plain)
					.list());
		return all;
	}

	@Override
	public void forget(PersonId person) {
		this.database.sql("delete from " + SILENT).param(person.value()).update();
		OF_PEOPLE.forEach((table) -> this.database.sql("delete from reminders.%s where person_id = ?".formatted(table))
			.param(person.value())
			.update());
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		// Who had no address got no mail and chose nothing; the other's reminders are
		// made anew from the tasks, as the other wants to be told.
		forget(from);
	}

}
