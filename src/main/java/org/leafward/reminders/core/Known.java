package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.leafward.reminders.ReminderState;

/**
 * A reminder that is already on record.
 *
 * @param id its row
 * @param dedupKey what it was made for, see {@link Wanted#dedupKey()}
 * @param bundle what it goes out with
 * @param firstDay first day of the task when the reminder was made
 * @param dueAt when it is or was due
 * @param state where it stands
 */
public record Known(UUID id, String dedupKey, String bundle, LocalDate firstDay, Instant dueAt,
		ReminderState state) {

	/**
	 * What has one reminder at a time.
	 * @return as {@link Wanted#line()}
	 */
	public String line() {
		return this.dedupKey.substring(0, this.dedupKey.lastIndexOf('@'));
	}

}
