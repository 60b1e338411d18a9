package org.leafward.reminders.links;

import java.util.UUID;
import org.leafward.reminders.core.Links.Act;

/**
 * What stands in the address at which one says what became of a reminder.
 *
 * @param reminder the reminder
 * @param proposed what the message proposed
 */
public record ActLink(UUID reminder, Act proposed) {
}
