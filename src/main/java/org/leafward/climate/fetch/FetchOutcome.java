package org.leafward.climate.fetch;

import org.jspecify.annotations.Nullable;
import org.leafward.climate.LoadReport;

/**
 * What came of asking a source about a station.
 *
 * @param source name of the source
 * @param station identifier as configured
 * @param outcome {@code fetched}, {@code partly} when time ran out and the rest follows,
 * {@code failed}, or {@code busy} when another node or call is at it
 * @param report what was loaded, for observations
 * @param failure why it failed
 */
public record FetchOutcome(String source, String station, String outcome, @Nullable LoadReport report,
		@Nullable String failure) {
}
