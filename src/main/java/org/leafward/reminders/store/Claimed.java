package org.leafward.reminders.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.Topic;

/**
 * A row that a node has taken to send.
 *
 * @param id the row
 * @param person who gets it
 * @param channel code of the channel
 * @param topic what it tells
 * @param task what it is about; null for an outlook
 * @param firstDay first day of the task it was made for
 * @param later whether the person asked to be told again
 * @param bundle what goes out together
 * @param expiresAt from when it is no longer worth sending
 * @param attempts tries so far, this one included
 * @param message the message it goes out with, written already or not
 * @param advisory the message of an advisory that it tells; null for all others
 */
public record Claimed(UUID id, PersonId person, String channel, Topic topic, @Nullable TaskId task, LocalDate firstDay,
		boolean later, String bundle, Instant expiresAt, int attempts, UUID message, @Nullable OfAdvisory advisory) {

	/**
	 * A row of a task or an outlook.
	 * @param id the row
	 * @param person who gets it
	 * @param channel code of the channel
	 * @param topic what it tells
	 * @param task what it is about
	 * @param firstDay first day of the task it was made for
	 * @param later whether the person asked to be told again
	 * @param bundle what goes out together
	 * @param expiresAt from when it is no longer worth sending
	 * @param attempts tries so far, this one included
	 * @param message the message it goes out with
	 */
	public Claimed(UUID id, PersonId person, String channel, Topic topic, @Nullable TaskId task, LocalDate firstDay,
			boolean later, String bundle, Instant expiresAt, int attempts, UUID message) {
		this(id, person, channel, topic, task, firstDay, later, bundle, expiresAt, attempts, message, null);
	}

}
