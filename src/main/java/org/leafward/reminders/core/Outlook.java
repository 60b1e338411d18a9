package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;

/**
 * What a person has before them. Lists are in the order of {@code TaskCalendar} and hold
 * nothing twice.
 *
 * @param today the day of the outlook
 * @param thisWeek tasks that begin within the seven days from today
 * @param nextWeek tasks that begin within the seven days after those
 * @param open tasks that began before today, still hold and aren't done
 * @param holdOffs what must be left alone on some of the fourteen days
 * @param changed tasks that were withdrawn within the last seven days before they were
 * over, with their reasons
 */
public record Outlook(LocalDate today, List<CareTask> thisWeek, List<CareTask> nextWeek, List<CareTask> open,
		List<CareTask> holdOffs, List<CareTask> changed) {

	/**
	 * Whether there is nothing to tell.
	 * @return true in the off-season
	 */
	public boolean empty() {
		return this.thisWeek.isEmpty() && this.nextWeek.isEmpty() && this.open.isEmpty() && this.changed.isEmpty();
	}

	/**
	 * Leaves out tasks that are told elsewhere in the message.
	 * @param told which
	 * @return the rest
	 */
	Outlook without(Set<TaskId> told) {
		return new Outlook(this.today, without(this.thisWeek, told), without(this.nextWeek, told),
				without(this.open, told), without(this.holdOffs, told), without(this.changed, told));
	}

	private static List<CareTask> without(List<CareTask> tasks, Set<TaskId> told) {
		return tasks.stream().filter((task) -> !told.contains(task.id())).toList();
	}

}
