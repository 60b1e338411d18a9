package org.leafward.reminders;

import java.time.Instant;

/**
 * Messages that left in an hour.
 *
 * @param from first instant of the hour
 * @param messages how many
 */
public record SentHour(Instant from, long messages) {
}
