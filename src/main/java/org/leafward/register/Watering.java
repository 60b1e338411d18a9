package org.leafward.register;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * Water that somebody gave.
 *
 * @param id identifier
 * @param site where
 * @param planting whose bed was watered; null for the whole site
 * @param day on which, in the time zone of the site
 * @param millimetres depth over the ground that was watered, above 0 to 200 mm
 * @param note may be empty
 * @param by who entered it; null when an operator did
 * @param enteredAt when
 */
public record Watering(WateringId id, SiteId site, @Nullable PlantingId planting, LocalDate day, double millimetres,
		String note, @Nullable PersonId by, Instant enteredAt) {
}
