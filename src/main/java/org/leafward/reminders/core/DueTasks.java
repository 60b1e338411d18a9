package org.leafward.reminders.core;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;

/** Which tasks call for a reminder. */
public final class DueTasks {

	/** How many days ahead reminders are made. */
	public static final int AHEAD_DAYS = 14;

	private DueTasks() {
	}

	/**
	 * The first days for which there are reminders. It starts before today so that a
	 * server that was off for a weekend still sends.
	 * @param today the day where the person is
	 * @return {@value DueTimes#LATE_DAYS} days back to {@value #AHEAD_DAYS} days ahead
	 */
	public static DayWindow firstDays(LocalDate today) {
		return new DayWindow(today.minusDays(DueTimes.LATE_DAYS), today.plusDays(AHEAD_DAYS));
	}

	/**
	 * The reminders that tasks call for: one on the first day of each planned task whose
	 * first day is near. Of a ramp only its first day counts; the others are in the feed.
	 * @param tasks tasks of one person
	 * @param today the day where the person is
	 * @param zone zone of the person
	 * @return in the order of the tasks
	 */
	public static List<Wanted> wanted(List<CareTask> tasks, LocalDate today, ZoneId zone) {
		DayWindow near = firstDays(today);
		return tasks.stream()
			.filter(DueTasks::callsForOne)
			.filter((task) -> near.contains(task.window().from()))
			.map((task) -> wanted(task, zone))
			.toList();
	}

	/**
	 * Whether a task has a reminder at all.
	 * @param task the task
	 * @return false for what is withdrawn, done or skipped, and for later days of a ramp
	 */
	public static boolean callsForOne(CareTask task) {
		boolean laterRampDay = task.kind() == TaskKind.RAMP_DAY && task.occurrence() != 1;
		return task.state() == TaskState.PLANNED && !laterRampDay;
	}

	private static Wanted wanted(CareTask task, ZoneId zone) {
		LocalDate firstDay = task.window().from();
		return new Wanted(task.id(), firstDay, DueTimes.dueAt(firstDay, zone), DueTimes.expiresAt(firstDay, zone));
	}

}
