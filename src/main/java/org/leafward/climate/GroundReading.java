package org.leafward.climate;

import java.time.LocalDate;
import org.leafward.measure.Explanation;

/**
 * Whether the ground at 10 cm (4 inches) is frozen, by the model of the soil.
 *
 * @param day the last day that the model knows
 * @param frozen whether it is
 * @param explanation how it came about
 */
public record GroundReading(LocalDate day, boolean frozen, Explanation explanation) {
}
