package org.leafward.reminders;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;

/**
 * A person is to be told of something once, through one channel.
 *
 * @param id identifier
 * @param person who is told
 * @param channel code of the channel
 * @param topic what is told
 * @param task the task; null for an outlook
 * @param firstDay first day of the task, or the day of the outlook
 * @param dueAt when it is due
 * @param state where it stands
 */
public record Reminder(UUID id, PersonId person, String channel, Topic topic, @Nullable TaskId task, LocalDate firstDay,
		Instant dueAt, ReminderState state) {
}
