package org.leafward.reminders;

import java.time.Instant;

/**
 * An address that gets no reminders.
 *
 * @param address the address in small letters
 * @param reason what a mail server said of it, one line
 * @param since when it said so
 */
public record Suppressed(String address, String reason, Instant since) {
}
