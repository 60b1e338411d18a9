package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskId;
import org.leafward.reminders.Topic;

/**
 * A reminder that the plan and the person's wishes call for.
 *
 * @param channel code of the channel
 * @param topic what it tells
 * @param subject the task, or the person whose outlook it is
 * @param firstDay first day of the task, or the day of the outlook or of the change
 * @param bundle what goes out together
 * @param dueAt when it is due
 * @param expiresAt from when it is no longer worth sending
 */
public record Wanted(String channel, Topic topic, UUID subject, LocalDate firstDay, String bundle, Instant dueAt,
		Instant expiresAt) {

	/**
	 * What has one reminder at a time.
	 * @return channel and subject, and whether it is about a change; each outlook is one
	 * for itself
	 */
	public String line() {
		return this.channel + ((this.topic == Topic.CHANGE) ? Known.CHANGE : ":") + this.subject
				+ ((this.topic == Topic.OUTLOOK) ? "/" + this.firstDay : "");
	}

	/**
	 * The key that lets a task have one reminder for one first day and channel.
	 * @return line and first day
	 */
	public String dedupKey() {
		return line() + "@" + this.firstDay;
	}

	/**
	 * The same at another time.
	 * @param due when it is due
	 * @param together what it goes out with
	 * @return the rest as it is
	 */
	Wanted dueAt(Instant due, String together) {
		return new Wanted(this.channel, this.topic, this.subject, this.firstDay, together, due, this.expiresAt);
	}

	/**
	 * The task it is about.
	 * @return null for an outlook
	 */
	public @Nullable TaskId task() {
		return (this.topic == Topic.OUTLOOK) ? null : new TaskId(this.subject);
	}

}
