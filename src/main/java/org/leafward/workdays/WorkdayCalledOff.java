package org.leafward.workdays;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A published workday was called off.
 *
 * @param workday which
 * @param group whose
 * @param day the day that it was to be on
 * @param at when
 */
public record WorkdayCalledOff(UUID workday, UUID group, LocalDate day, Instant at) {
}
