package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.LapseRate;
import org.leafward.climate.core.state.NowFromRecords;
import org.springframework.stereotype.Service;

/** Reads what is known of the weather of a place, as figures. */
@Service
public class PlaceNowReader {

	private final LocalWeather weather;

	PlaceNowReader(LocalWeather weather) {
		this.weather = weather;
	}

	/**
	 * What is known of a place.
	 * @param place the place; its microclimate counts in the minima that are forecast
	 * @param today the day there
	 * @param surroundings the stations and forecasts around it
	 * @return as of now; a stale forecast counts as none
	 */
	public PlaceNow at(Place place, LocalDate today, Surroundings surroundings) {
		StationsAround around = surroundings.stations();
		List<PlaceDay> forecast = forecast(place, surroundings);
		return OneVersion.of(around, () -> NowFromRecords.of(place.point(), today,
				this.weather.near(place.point(), around, today.minusDays(NowFromRecords.DAYS), today.minusDays(1)),
				forecast));
	}

	private static List<PlaceDay> forecast(Place place, Surroundings surroundings) {
		return surroundings.forecast(place.point()).map((known) -> {
			double colder = LapseRate.colderBy(place.point(), known.station().point());
			double warmerNights = place.microclimate().minimumOffset();
			return known.days()
				.stream()
				.map((day) -> new PlaceDay(day.day(), less(tenth(day.minimum()), colder - warmerNights),
						less(tenth(day.maximum()), colder), tenth(day.precipitation()), whole(day.snowfall()), null,
						tenth(day.wind()), whole(day.lowestHumidity()), null, null))
				.toList();
		}).orElse(List.of());
	}

	private static @Nullable Double tenth(@Nullable Integer tenths) {
		return (tenths != null) ? tenths / 10.0 : null;
	}

	private static @Nullable Double whole(@Nullable Integer value) {
		return (value != null) ? (double) value : null;
	}

	private static @Nullable Double less(@Nullable Double value, double colder) {
		return (value != null) ? value - colder : null;
	}

}
