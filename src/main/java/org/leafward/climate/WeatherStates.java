package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.LapseRate;
import org.leafward.climate.core.state.DayFigures;
import org.leafward.climate.core.state.StateRules;
import org.leafward.measure.GeoPoint;
import org.springframework.stereotype.Service;

/**
 * The states of the weather at a place: from what was observed around it and from the
 * nearest forecast.
 */
@Service
public class WeatherStates {

	/** The longest spell that a state looks back on, days. */
	private static final int LOOK_BACK = (int) StateUnit.DAYS.highest();

	private final LocalWeather weather;

	private final Forecasts forecasts;

	private final Stations stations;

	private final Droughts droughts;

	WeatherStates(LocalWeather weather, Forecasts forecasts, Stations stations, Droughts droughts) {
		this.weather = weather;
		this.forecasts = forecasts;
		this.stations = stations;
		this.droughts = droughts;
	}

	/**
	 * Every named state on a day.
	 * @param place the place with its height
	 * @param today the day there
	 * @return one for each; a stale forecast counts as none
	 */
	public List<WeatherState> at(GeoPoint place, LocalDate today) {
		return rules(place, today).named();
	}

	/**
	 * The answers to questions on a day.
	 * @param place the place with its height
	 * @param today the day there
	 * @param questions what is asked
	 * @return one for each, in order; a stale forecast counts as none
	 */
	public List<WeatherState> at(GeoPoint place, LocalDate today, List<StateQuestion> questions) {
		StateRules rules = rules(place, today);
		return questions.stream().map(rules::answer).toList();
	}

	private StateRules rules(GeoPoint place, LocalDate today) {
		List<DayFigures> observed = this.weather.unchecked(place, today.minusDays(LOOK_BACK), today.minusDays(1))
			.days()
			.stream()
			.map((day) -> new DayFigures(day.date(), day.minimum(), day.maximum(), day.rain(), null, null, null))
			.toList();
		return new StateRules(today, observed, forecast(place), this.droughts.at(place, today).orElse(null));
	}

	private List<DayFigures> forecast(GeoPoint place) {
		return this.stations.near(place, LocalClimate.STATION_RADIUS_KILOMETRES)
			.stream()
			.flatMap((station) -> fresh(station, place).stream())
			.findFirst()
			.orElse(List.of());
	}

	private Optional<List<DayFigures>> fresh(Station station, GeoPoint place) {
		double colder = LapseRate.colderBy(place, station.point());
		return this.forecasts.of(station.id())
			.filter((forecast) -> !forecast.stale())
			.map((forecast) -> forecast.days().stream().map((day) -> figures(day, colder)).toList());
	}

	private static DayFigures figures(ForecastDay day, double colder) {
		return new DayFigures(day.day(), less(tenth(day.minimum()), colder), less(tenth(day.maximum()), colder),
				tenth(day.precipitation()), whole(day.snowfall()), tenth(day.wind()), whole(day.lowestHumidity()));
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
