package org.leafward.workdays;

import java.time.Instant;
import java.util.UUID;

/**
 * A workday was published.
 *
 * @param workday which
 * @param group whose
 * @param at when
 */
public record WorkdayFixed(UUID workday, UUID group, Instant at) {
}
