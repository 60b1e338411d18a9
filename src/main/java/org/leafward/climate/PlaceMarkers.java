package org.leafward.climate;

import java.util.Optional;

/**
 * The season markers of one place, computed on demand from the statistics of its
 * stations. Safe for use by threads.
 */
public interface PlaceMarkers {

	/**
	 * The date of an event in a season.
	 * @param key which event, at which probability
	 * @param season year of the season
	 * @return empty when the stations can't tell; {@link #whyMissing} says why
	 */
	Optional<SeasonMarker> on(MarkerKey key, int season);

	/**
	 * The reason why {@link #on} was empty.
	 * @param key which event
	 * @return a sentence for the person who asks
	 */
	String whyMissing(MarkerKey key);

}
