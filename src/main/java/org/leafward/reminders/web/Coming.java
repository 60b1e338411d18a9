package org.leafward.reminders.web;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.reminders.Reminder;
import org.leafward.reminders.Reminders;
import org.springframework.stereotype.Component;

/** What somebody will be told next. */
@Component
class Coming {

	private final Reminders reminders;

	private final TaskCalendar calendar;

	Coming(Reminders reminders, TaskCalendar calendar) {
		this.reminders = reminders;
		this.calendar = calendar;
	}

	/**
	 * One thing that somebody will be told.
	 *
	 * @param dueAt when
	 * @param channel code of the channel
	 * @param topic code of the topic
	 * @param task identifier of the task; null for an outlook
	 * @param title its title; null for an outlook
	 * @param plant what it is for; null for an outlook
	 * @param site where; null for an outlook
	 * @param firstDay first day of the task, or the day of the outlook
	 */
	record Upcoming(Instant dueAt, String channel, String topic, @Nullable UUID task, @Nullable String title,
			@Nullable String plant, @Nullable String site, LocalDate firstDay) {

		static Upcoming of(Reminder reminder, @Nullable CareTask task) {
			String code = reminder.topic().code();
			return (task == null)
					? new Upcoming(reminder.dueAt(), reminder.channel(), code, null, null, null, null,
							reminder.firstDay())
					: new Upcoming(reminder.dueAt(), reminder.channel(), code, task.id().value(), task.text().title(),
							task.plant(), task.siteName(), reminder.firstDay());
		}

	}

	/**
	 * What comes next.
	 * @param person who is told
	 * @param limit how many at most, 1 to 200
	 * @return soonest first, without tasks that are gone
	 */
	List<Upcoming> of(PersonId person, int limit) {
		List<Reminder> next = this.reminders.upcoming(person, limit);
		Map<TaskId, CareTask> tasks = this.calendar
			.find(next.stream().map(Reminder::task).filter(Objects::nonNull).distinct().toList());
		return next.stream()
			.filter((one) -> one.task() == null || tasks.containsKey(one.task()))
			.map((one) -> Upcoming.of(one, (one.task() != null) ? tasks.get(one.task()) : null))
			.toList();
	}

}
