package org.leafward.climate;

import java.time.LocalDate;
import org.leafward.measure.Explanation;

/**
 * A dated local event of one season at one place.
 *
 * @param key which event
 * @param season year of the season
 * @param date the date at the key's probability
 * @param earliest the date that one year in ten undercuts
 * @param latest the date that one year in ten exceeds
 * @param explanation how the date came about, down to the stations
 */
public record SeasonMarker(MarkerKey key, int season, LocalDate date, LocalDate earliest, LocalDate latest,
		Explanation explanation) {
}
