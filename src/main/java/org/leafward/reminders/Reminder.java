package org.leafward.reminders;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;

/**
 * The word in time about one task.
 *
 * @param id identifier
 * @param person who gets it
 * @param task what it is about
 * @param firstDay first day of the task it was made for
 * @param dueAt when it is due
 * @param state where it stands
 */
public record Reminder(UUID id, PersonId person, TaskId task, LocalDate firstDay, Instant dueAt, ReminderState state) {
}
