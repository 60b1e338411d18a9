package org.leafward.climate.fetch;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How it stands with a source at a station.
 *
 * @param source name of the source
 * @param station identifier as configured
 * @param kind {@code observations} or {@code forecast}
 * @param lastSuccess when it last answered usefully
 * @param lastTry when it was last asked
 * @param failures failures since the last success
 * @param lastFailure why the last try failed; null after a success
 * @param nextTry when it is asked again; null when it was never asked and is due
 */
public record SourceStatus(String source, String station, String kind, @Nullable Instant lastSuccess,
		@Nullable Instant lastTry, int failures, @Nullable String lastFailure, @Nullable Instant nextTry) {
}
