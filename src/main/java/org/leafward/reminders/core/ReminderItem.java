package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskState;
import org.leafward.reminders.Topic;

/**
 * A task in a message.
 *
 * @param reminder the reminder it comes from
 * @param topic why it is told
 * @param task the task as it is now
 * @param rampDays length of the ramp it belongs to, in days; 0 when it belongs to none
 * @param toldDay for a task that fell away, the first day that was told
 */
public record ReminderItem(UUID reminder, Topic topic, CareTask task, int rampDays, @Nullable LocalDate toldDay) {

	/**
	 * Whether it tells that the task is not needed any more.
	 * @return false when it tells that it moved
	 */
	public boolean fellAway() {
		return this.topic == Topic.CHANGE && this.task.state() == TaskState.WITHDRAWN;
	}

}
