package org.leafward.climate;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The newest forecast of a station, however old it is.
 *
 * @param station the station
 * @param source where it came from
 * @param issuedAt when the source made it
 * @param fetchedAt when it got here
 * @param stale whether it was issued too long ago to lean on
 * @param lastFailure why the last try to fetch a newer one failed; null when it didn't
 * @param days in their order
 */
public record StationForecast(StationId station, String source, Instant issuedAt, Instant fetchedAt, boolean stale,
		@Nullable String lastFailure, List<ForecastDay> days) {

	public StationForecast {
		days = List.copyOf(days);
	}

}
