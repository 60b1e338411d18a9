package org.leafward.climate;

import java.util.Optional;
import java.util.OptionalDouble;

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

	/**
	 * How often it freezes.
	 * @param threshold the air falls to this or below
	 * @return the share of years, 0 to 1, counted in that half of the year, before or
	 * after midsummer, in which it comes more often; empty when no station can tell
	 */
	OptionalDouble yearsWithFreeze(TemperatureThreshold threshold);

}
