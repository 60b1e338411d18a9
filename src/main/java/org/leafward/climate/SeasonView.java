package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;

/**
 * A season at a place as far as it has come.
 *
 * @param season year of the season
 * @param station the station whose record speaks for the place
 * @param shift how the temperatures of the place differ from the station's
 * @param lastObserved last day with both temperatures
 * @param recordEnd a sentence when the record ends early, or null
 * @param heat degree-days
 * @param around what up to two other stations would have as their sum; empty before the
 * first sum
 * @param temperatures minima and maxima
 * @param forecast the station's newest forecast, or null
 * @param explanation how all this came about
 */
public record SeasonView(int season, Station station, TemperatureShift shift, LocalDate lastObserved,
		@Nullable String recordEnd, HeatSoFar heat, List<HeatAround> around, TemperatureSeason temperatures,
		@Nullable StationForecast forecast, Explanation explanation) {

	public SeasonView {
		around = List.copyOf(around);
	}

}
