package org.leafward.reminders.dispatch;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.reminders.core.DueTasks;
import org.leafward.reminders.core.ReminderItem;
import org.leafward.reminders.store.Claimed;

/**
 * Claimed rows, looked at once more against the plan just before they are sent.
 *
 * @param good rows to send
 * @param items what to say about them, in the same order
 * @param gone rows whose task went away or moved
 * @param late rows that came too late
 * @param moved whether a task of a gone row has other dates now
 */
record Sorted(List<Claimed> good, List<ReminderItem> items, List<Claimed> gone, List<Claimed> late, boolean moved) {

	/** Longer than any ramp: a step has at most 60 days and a ramp rarely over six. */
	private static final int RAMP_REACH_DAYS = 365;

	static Sorted of(List<Claimed> rows, TaskCalendar calendar, Instant now) {
		List<Claimed> good = new ArrayList<>();
		List<ReminderItem> items = new ArrayList<>();
		List<Claimed> gone = new ArrayList<>();
		List<Claimed> late = new ArrayList<>();
		boolean moved = false;
		for (Claimed row : rows) {
			Optional<CareTask> task = calendar.find(row.task());
			if (task.isEmpty() || !DueTasks.callsForOne(task.get())) {
				gone.add(row);
			}
			else if (!task.get().window().from().equals(row.firstDay())) {
				gone.add(row);
				moved = true;
			}
			else if (!now.isBefore(row.expiresAt())) {
				late.add(row);
			}
			else {
				good.add(row);
				items.add(new ReminderItem(task.get(), rampDays(task.get(), calendar)));
			}
		}
		return new Sorted(good, items, gone, late, moved);
	}

	private static int rampDays(CareTask first, TaskCalendar calendar) {
		if (first.kind() != TaskKind.RAMP_DAY) {
			return 0;
		}
		DayWindow reach = new DayWindow(first.window().from(), first.window().from().plusDays(RAMP_REACH_DAYS));
		return (int) calendar.ofSite(first.site(), reach)
			.stream()
			.filter((task) -> task.kind() == TaskKind.RAMP_DAY && task.state() == TaskState.PLANNED)
			.filter((task) -> task.subject().equals(first.subject()) && task.rule().equals(first.rule())
					&& task.season() == first.season())
			.count();
	}

}
