package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.leafward.care.TaskId;
import org.leafward.reminders.ReminderState;

/**
 * A reminder that is already on record.
 *
 * @param id its row
 * @param task the task
 * @param firstDay first day of the task when the reminder was made
 * @param dueAt when it is or was due
 * @param state where it stands
 */
public record Known(UUID id, TaskId task, LocalDate firstDay, Instant dueAt, ReminderState state) {
}
