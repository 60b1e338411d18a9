package org.leafward.reminders;

import java.util.List;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.reminders.store.ReminderTable;
import org.springframework.stereotype.Service;

/** What a person will get, and when. */
@Service
public class Reminders {

	private static final int MOST = 200;

	private final ReminderTable table;

	Reminders(ReminderTable table) {
		this.table = table;
	}

	/**
	 * Reminders that are still to be sent. Reminders are made two weeks ahead.
	 * @param person who gets them
	 * @param limit how many at most, 1 to 200
	 * @return soonest first
	 * @throws BadInput if the limit is out of range
	 */
	public List<Reminder> upcoming(PersonId person, int limit) {
		if (limit < 1 || limit > MOST) {
			throw new BadInput("limit %d is not 1 to %d".formatted(limit, MOST), "limit", "ask for fewer");
		}
		return this.table.upcoming(person, limit);
	}

}
