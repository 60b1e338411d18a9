package org.leafward.climate;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;

/**
 * A season at a place as far as it has come.
 *
 * @param season year of the season
 * @param station the station whose record speaks for the place
 * @param colderBy how much colder the place is than the station for its height, °C
 * @param lastObserved last day with both temperatures
 * @param recordEnd a sentence when the record ends early, or null
 * @param heat degree-days
 * @param temperatures minima and maxima
 * @param chill chill of the winter before
 * @param forecast the station's newest forecast, or null
 * @param explanation how all this came about
 */
public record SeasonView(int season, Station station, double colderBy, LocalDate lastObserved,
		@Nullable String recordEnd, HeatSoFar heat, TemperatureSeason temperatures, ChillSoFar chill,
		@Nullable StationForecast forecast, Explanation explanation) {
}
