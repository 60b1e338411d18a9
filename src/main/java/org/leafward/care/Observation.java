package org.leafward.care;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/**
 * A phase that a planting was seen to reach, or an event that was seen.
 *
 * @param id identifier
 * @param site where
 * @param planting on which planting; null for the site as a whole
 * @param kind a phase or an event
 * @param name name of the phase or event, for example {@code bud-break}
 * @param day on which, in the time zone of the site
 * @param season year of the season that it belongs to
 * @param by who entered it; null when an operator did
 * @param enteredAt when
 */
public record Observation(ObservationId id, SiteId site, @Nullable PlantingId planting, Kind kind, String name,
		LocalDate day, int season, @Nullable PersonId by, Instant enteredAt) {

	/** What was seen. */
	public enum Kind {

		/** A phase of the plant's year; replaces its estimate. */
		PHASE,

		/** Something that happened; rules hang on it. */
		EVENT

	}

}
