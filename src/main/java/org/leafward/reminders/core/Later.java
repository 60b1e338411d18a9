package org.leafward.reminders.core;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskState;
import org.leafward.reminders.Series;
import org.leafward.reminders.Topic;
import org.leafward.reminders.Wishes;

/**
 * A reminder that somebody asked to have again. It has a row of its own beside the one
 * that the plan calls for, and goes out with what else falls on that morning.
 *
 * @param task what it is about
 * @param channel code of the channel
 * @param topic what it tells, as before
 * @param day when it is told again, where the person is
 * @param dueAt the person's morning of that day
 * @param expiresAt from when it is no longer worth sending
 */
public record Later(TaskId task, String channel, Topic topic, LocalDate day, Instant dueAt, Instant expiresAt) {

	/** Days until it is told again. */
	public static final int DAYS = 3;

	/** What it goes out with: that morning's message. */
	public static final Series SERIES = Series.MORNING;

	/**
	 * When a task is told again.
	 * @param task the task
	 * @param told the reminder that was too early
	 * @param wishes how the person wants to be told
	 * @param zone zone of the person
	 * @param now what time it is
	 * @return on the morning {@value #DAYS} days from today, or after a pause; empty when
	 * the task isn't planned any more, or is over by then
	 */
	public static Optional<Later> of(CareTask task, Told told, Wishes wishes, ZoneId zone, Instant now) {
		LocalDate day = LocalDate.ofInstant(now, zone).plusDays(DAYS);
		LocalDate pause = wishes.pausedUntil();
		LocalDate open = (pause != null && pause.isAfter(day)) ? pause : day;
		LocalDateTime morning = wishes.quiet().after(open.atTime(wishes.morning()));
		if (task.state() != TaskState.PLANNED || morning.toLocalDate().isAfter(task.window().to())) {
			return Optional.empty();
		}
		LocalDate late = open.plusDays(DueTimes.LATE_DAYS);
		LocalDate last = late.isBefore(task.window().to()) ? late : task.window().to();
		return Optional.of(new Later(task.id(), told.channel(), told.topic(), open, DueTimes.at(morning, zone),
				DueTimes.at(last.plusDays(1).atStartOfDay(), zone)));
	}

	/**
	 * The beginning that the keys of all later reminders of a task share.
	 * @param channel code of the channel
	 * @param task the task
	 * @return all of the key but the day
	 */
	public static String line(String channel, TaskId task) {
		return channel + Known.LATER + task;
	}

	/**
	 * The key that lets a task be told again once on a day.
	 * @return line and day
	 */
	public String dedupKey() {
		return line(this.channel, this.task) + "@" + this.day;
	}

	/**
	 * What it goes out with.
	 * @return that morning's message
	 */
	public String bundle() {
		return SERIES.code() + ":" + this.day;
	}

}
