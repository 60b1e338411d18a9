package org.leafward.climate.web;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.StationForecast;

/**
 * A forecast as the API gives it.
 *
 * @param station identifier of the station
 * @param source where it came from
 * @param issuedAt when the source made it
 * @param fetchedAt when it got here
 * @param stale whether it was issued too long ago to lean on
 * @param lastFailure why no newer one could be fetched, if so
 * @param days the days
 */
record ForecastView(String station, String source, Instant issuedAt, Instant fetchedAt, boolean stale,
		@Nullable String lastFailure, List<Day> days) {

	static ForecastView of(StationForecast forecast) {
		return new ForecastView(forecast.station().value(), forecast.source(), forecast.issuedAt(),
				forecast.fetchedAt(), forecast.stale(), forecast.lastFailure(),
				forecast.days().stream().map(Day::of).toList());
	}

	/**
	 * A day.
	 *
	 * @param date the day at the station
	 * @param minimumC °C
	 * @param maximumC °C
	 * @param precipitationMm mm
	 * @param snowfallMm depth of new snow, mm
	 * @param windMs mean speed, m/s
	 * @param lowestHumidityPercent relative
	 */
	record Day(LocalDate date, @Nullable Double minimumC, @Nullable Double maximumC, @Nullable Double precipitationMm,
			@Nullable Integer snowfallMm, @Nullable Double windMs, @Nullable Integer lowestHumidityPercent) {

		static Day of(ForecastDay day) {
			return new Day(day.day(), whole(day.minimum()), whole(day.maximum()), whole(day.precipitation()),
					day.snowfall(), whole(day.wind()), day.lowestHumidity());
		}

		private static @Nullable Double whole(@Nullable Integer tenths) {
			return (tenths != null) ? tenths / 10.0 : null;
		}

	}

}
