package org.leafward.reminders.core;

import org.leafward.care.CareTask;

/**
 * A task in a mail.
 *
 * @param task the task
 * @param rampDays length of the ramp it begins, in days; 0 when it begins none
 */
public record ReminderItem(CareTask task, int rampDays) {
}
