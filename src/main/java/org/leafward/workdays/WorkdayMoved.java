package org.leafward.workdays;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A published workday has another day, time, place or list of tasks.
 *
 * @param workday which
 * @param group whose
 * @param from its day before
 * @param to its day now
 * @param sequence its sequence number now; the same as before when day, time and place
 * stayed
 * @param at when
 */
public record WorkdayMoved(UUID workday, UUID group, LocalDate from, LocalDate to, int sequence, Instant at) {
}
