package org.leafward.climate.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.StationId;
import org.leafward.climate.WeatherSeries;
import org.leafward.measure.Explanation;

/**
 * Evapotranspiration of the reference grass as the API gives it.
 *
 * @param station identifier
 * @param totalMillimetres of the days that are known
 * @param daysMissing days without both temperatures
 * @param days one for each day
 * @param explanation by which formulas, with which substitutes
 */
record EvapotranspirationView(String station, double totalMillimetres, long daysMissing, List<Day> days,
		Explanation explanation) {

	static EvapotranspirationView of(StationId station, WeatherSeries series) {
		double total = series.days()
			.stream()
			.map(WeatherSeries.Day::evapotranspiration)
			.filter(Objects::nonNull)
			.mapToDouble(Double::doubleValue)
			.sum();
		long missing = series.days().stream().filter((day) -> day.evapotranspiration() == null).count();
		return new EvapotranspirationView(station.value(), round(total), missing,
				series.days().stream().map(Day::of).toList(), series.explanation());
	}

	private static double round(double amount) {
		return Math.round(amount * 100) / 100.0;
	}

	/** A day; null where a temperature is missing. */
	record Day(LocalDate date, @Nullable Double millimetres, @Nullable String method, List<String> substitutes) {

		static Day of(WeatherSeries.Day day) {
			Double amount = day.evapotranspiration();
			return new Day(day.date(), (amount != null) ? round(amount) : null, day.method(), day.substitutes());
		}

	}

}
