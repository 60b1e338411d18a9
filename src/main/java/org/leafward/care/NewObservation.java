package org.leafward.care;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.register.PlantingId;

/**
 * An observation to be entered.
 *
 * @param planting on which planting; null for the site as a whole, which has events only
 * @param kind a phase or an event
 * @param name name of the phase or event
 * @param day on which, in the time zone of the site
 */
public record NewObservation(@Nullable PlantingId planting, Observation.Kind kind, String name, LocalDate day) {
}
