package org.leafward.lookalikes;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * It was said what a plant's injury is taken for. Facts only, and the place no nearer
 * than a tenth of a degree. A result that comes later closes a case once more, under the
 * same identifier; the last one counts.
 *
 * @param plantCase which case
 * @param cause cause of the key; null when it was none of them
 * @param basis {@link Basis} by name
 * @param county county of the place; empty when not known
 * @param latitude degrees north, to a tenth; null without a site
 * @param longitude degrees east, to a tenth; null without a site
 * @param species species of the catalogue; null when it isn't there
 * @param seen the day on which it was first seen
 * @param closed the day at the place
 */
public record CaseClosed(UUID plantCase, @Nullable String cause, String basis, String county, @Nullable Double latitude,
		@Nullable Double longitude, @Nullable String species, LocalDate seen, LocalDate closed) {
}
