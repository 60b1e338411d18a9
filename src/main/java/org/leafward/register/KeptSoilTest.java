package org.leafward.register;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * A soil test that somebody entered.
 *
 * @param id identifier
 * @param site where
 * @param planting from whose bed the sample was taken; null for the whole site
 * @param day on which the sample was taken, in the time zone of the site
 * @param figures what the laboratory measured
 * @param depthCentimetres depth to which the sample was taken, cm, 5 to 100
 * @param drainage how water leaves the bed
 * @param note may be empty
 * @param by who entered it; null when an operator did
 * @param enteredAt when
 */
public record KeptSoilTest(SoilTestId id, SiteId site, @Nullable PlantingId planting, LocalDate day,
		SoilFigures figures, double depthCentimetres, SoilDrainage drainage, String note, @Nullable PersonId by,
		Instant enteredAt) {
}
