package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import org.leafward.care.TaskId;

/**
 * A reminder that a task calls for.
 *
 * @param task the task
 * @param firstDay its first day
 * @param dueAt when the reminder is due
 * @param expiresAt from when it is no longer worth sending
 */
public record Wanted(TaskId task, LocalDate firstDay, Instant dueAt, Instant expiresAt) {

	/**
	 * The key that lets a task have one reminder for one first day.
	 * @return task and first day
	 */
	public String dedupKey() {
		return this.task + "@" + this.firstDay;
	}

}
