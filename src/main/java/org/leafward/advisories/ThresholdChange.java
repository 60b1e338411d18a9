package org.leafward.advisories;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A change of a threshold.
 *
 * @param condition code of the condition
 * @param threshold name of the threshold
 * @param scope code of a county or a region
 * @param value the new value; null for the usual one
 * @param note why, may be empty
 * @param by name of who changed it
 * @param at when
 */
public record ThresholdChange(String condition, String threshold, String scope, @Nullable Double value, String note,
		String by, Instant at) {
}
