package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;

/**
 * The observed weather of a place, day by day.
 *
 * @param place where
 * @param days one for each day of the period, in order
 * @param explanation from which stations, by which formulas
 */
public record WeatherSeries(GeoPoint place, List<Day> days, Explanation explanation) {

	public WeatherSeries {
		days = List.copyOf(days);
	}

	/**
	 * A day; null stands for what no station has.
	 *
	 * @param date the day
	 * @param minimum °C at the place
	 * @param maximum °C at the place
	 * @param rain mm, melted snow included
	 * @param evapotranspiration of the reference grass, mm
	 * @param method name of the formula it was made by
	 * @param substitutes what stood in for values that nobody measured, in words
	 * @param station whose temperatures these are
	 */
	public record Day(LocalDate date, @Nullable Double minimum, @Nullable Double maximum, @Nullable Double rain,
			@Nullable Double evapotranspiration, @Nullable String method, List<String> substitutes,
			@Nullable StationId station) {

		public Day {
			substitutes = List.copyOf(substitutes);
		}

	}

}
