package org.leafward.workdays;

import java.time.Instant;
import java.util.UUID;

/**
 * Somebody stands to a workday otherwise than before.
 *
 * @param workday which
 * @param group whose
 * @param person who
 * @param state name of the state, for example {@code IN}
 * @param at when
 */
public record SignUpChanged(UUID workday, UUID group, UUID person, String state, Instant at) {
}
