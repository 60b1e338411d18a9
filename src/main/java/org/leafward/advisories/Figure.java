package org.leafward.advisories;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A figure behind a proposal.
 *
 * @param code its name in texts, such as {@code low}
 * @param label what it is
 * @param value the figure in the unit
 * @param unit °C, mm, m/s, percent, days, or empty for a plain number
 * @param limit the threshold that it met; null where it is told for itself
 * @param day the day that it is of; null where it is of no single day
 */
public record Figure(String code, Bilingual label, double value, String unit, @Nullable Double limit,
		@Nullable LocalDate day) {
}
