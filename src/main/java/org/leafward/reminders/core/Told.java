package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;

/**
 * A reminder that somebody acts on.
 *
 * @param id its row
 * @param person who was told
 * @param task what it is about
 * @param channel code of the channel
 * @param topic what it tells
 * @param firstDay first day of the task when the reminder was made
 * @param message the message it went out with; null when it waits for another
 * @param series what that message belongs to; null without a message
 */
public record Told(UUID id, PersonId person, TaskId task, String channel, Topic topic, LocalDate firstDay,
		@Nullable UUID message, @Nullable Series series) {

	/** Days after the first day on which the links of a reminder still work. */
	public static final int LINK_DAYS = 60;

	/**
	 * Whether its links have ended.
	 * @param today the day at the site
	 * @return true from the day after the last of {@value #LINK_DAYS} days on
	 */
	public boolean endedOn(LocalDate today) {
		return today.isAfter(this.firstDay.plusDays(LINK_DAYS));
	}

}
