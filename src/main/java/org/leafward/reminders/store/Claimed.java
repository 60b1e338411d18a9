package org.leafward.reminders.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;

/**
 * A row that a node has taken to send.
 *
 * @param id the row
 * @param person who gets it
 * @param task what it is about
 * @param firstDay first day of the task it was made for
 * @param expiresAt from when it is no longer worth sending
 * @param attempts tries so far, this one included
 * @param mail the mail of an earlier try
 */
public record Claimed(UUID id, PersonId person, TaskId task, LocalDate firstDay, Instant expiresAt, int attempts,
		@Nullable UUID mail) {
}
