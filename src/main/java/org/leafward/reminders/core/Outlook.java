package org.leafward.reminders.core;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;

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

	private static final int WEEK = 7;

	/**
	 * The days it looks at.
	 * @param today the day of the outlook
	 * @return fourteen days
	 */
	public static DayWindow days(LocalDate today) {
		return new DayWindow(today, today.plusDays(2 * WEEK - 1));
	}

	/**
	 * Sorts tasks into an outlook.
	 * @param tasks a person's tasks that overlap {@link #days}
	 * @param told tasks that the message tells anyway
	 * @param today the day of the outlook
	 * @param now the time of the outlook
	 * @return without those told, and of a ramp only the first day that is ahead
	 */
	public static Outlook of(Collection<CareTask> tasks, Set<TaskId> told, LocalDate today, Instant now) {
		DayWindow first = new DayWindow(today, today.plusDays(WEEK - 1));
		DayWindow second = new DayWindow(today.plusDays(WEEK), today.plusDays(2 * WEEK - 1));
		Predicate<CareTask> fresh = (task) -> !told.contains(task.id());
		Predicate<CareTask> stands = fresh.and((task) -> task.state() == TaskState.PLANNED);
		Predicate<CareTask> held = (task) -> task.kind() == TaskKind.HOLD_OFF;
		Predicate<CareTask> begins = stands.and(held.negate())
			.and((task) -> task.kind() != TaskKind.RAMP_DAY || task.occurrence() == 1);
		Predicate<CareTask> open = stands
			.and((task) -> task.kind() == TaskKind.DO && task.window().from().isBefore(today));
		Predicate<CareTask> fell = fresh.and((task) -> task.state() == TaskState.WITHDRAWN
				&& !task.changedAt().isBefore(now.minus(Duration.ofDays(WEEK))));
		return new Outlook(today, some(tasks, begins.and((task) -> first.contains(task.window().from()))),
				some(tasks, begins.and((task) -> second.contains(task.window().from()))), some(tasks, open),
				some(tasks, stands.and(held)), some(tasks, fell));
	}

	private static List<CareTask> some(Collection<CareTask> tasks, Predicate<CareTask> which) {
		return tasks.stream().filter(which).toList();
	}

	/**
	 * Whether there is nothing to tell.
	 * @return true in the off-season
	 */
	public boolean empty() {
		return this.thisWeek.isEmpty() && this.nextWeek.isEmpty() && this.open.isEmpty() && this.changed.isEmpty();
	}

}
