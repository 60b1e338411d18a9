package org.leafward.climate.store;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * How it stands with a source at a place.
 *
 * @param source name of the source
 * @param key the place
 * @param lastTryAt when it was last asked
 * @param lastOkAt when it last answered usefully
 * @param failures failures since then
 * @param nextTryAt when it is to be asked again
 * @param lastError why the last try failed; null after a success
 * @param reached day up to which its record has been read
 */
public record FetchState(String source, String key, @Nullable Instant lastTryAt, @Nullable Instant lastOkAt,
		int failures, Instant nextTryAt, @Nullable String lastError, @Nullable LocalDate reached) {
}
