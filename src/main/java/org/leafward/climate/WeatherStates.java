package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.LapseRate;
import org.leafward.climate.core.state.DayFigures;
import org.leafward.climate.core.state.StateFigures;
import org.leafward.climate.core.state.StateRules;
import org.leafward.measure.GeoPoint;
import org.springframework.stereotype.Service;
import org.springframework.util.function.SingletonSupplier;

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

	private final Grounds grounds;

	WeatherStates(LocalWeather weather, Forecasts forecasts, Stations stations, Droughts droughts, Grounds grounds) {
		this.weather = weather;
		this.forecasts = forecasts;
		this.stations = stations;
		this.droughts = droughts;
		this.grounds = grounds;
	}

	/**
	 * Every named state on a day.
	 * @param place the place
	 * @param today the day there
	 * @return one for each; a stale forecast counts as none
	 */
	public List<WeatherState> at(Place place, LocalDate today) {
		return outlook(place, today).named();
	}

	/**
	 * The answers to questions on a day.
	 * @param place the place
	 * @param today the day there
	 * @param questions what is asked
	 * @return one for each, in order; a stale forecast counts as none
	 */
	public List<WeatherState> at(Place place, LocalDate today, List<StateQuestion> questions) {
		WeatherOutlook outlook = outlook(place, today);
		return questions.stream().map(outlook::answer).toList();
	}

	/**
	 * The weather as it is seen from a day, for any number of questions. Nothing is
	 * looked up before the first.
	 * @param place the place; its microclimate counts in the minima that are forecast
	 * @param today the day there
	 * @return answers of this moment; keep it no longer than the questions take
	 */
	public WeatherOutlook outlook(Place place, LocalDate today) {
		return new StateRules(today, new Figures(place, today, this.stations::around, () -> this.forecasts
			.freshest(this.stations.near(place.point(), LocalClimate.STATION_RADIUS_KILOMETRES))));
	}

	/**
	 * As {@link #outlook(Place, LocalDate)}, with stations and forecasts that were read
	 * before.
	 * @param place the place; its microclimate counts in the minima that are forecast
	 * @param today the day there
	 * @param surroundings what is around it
	 * @return answers of that moment; keep it no longer than the questions take
	 */
	public WeatherOutlook outlook(Place place, LocalDate today, Surroundings surroundings) {
		return new StateRules(today,
				new Figures(place, today, surroundings.stations(), () -> surroundings.forecast(place.point())));
	}

	/** The figures of a place, each looked up once. */
	private final class Figures implements StateFigures {

		private final Supplier<List<DayFigures>> observed;

		private final Supplier<List<DayFigures>> forecast;

		private final Supplier<Optional<DroughtReading>> drought;

		private final Supplier<Optional<GroundReading>> ground;

		Figures(Place place, LocalDate today, StationsAround around, Supplier<Optional<Forecasts.Fresh>> forecast) {
			WeatherStates all = WeatherStates.this;
			this.observed = SingletonSupplier.of(() -> all.observed(place.point(), around, today));
			this.forecast = SingletonSupplier.of(() -> figures(place, forecast.get()));
			this.drought = SingletonSupplier.of(() -> all.droughts.at(place.point(), around, today));
			this.ground = SingletonSupplier.of(() -> all.grounds.at(place.point(), around, today));
		}

		@Override
		public List<DayFigures> observed() {
			return this.observed.get();
		}

		@Override
		public List<DayFigures> forecast() {
			return this.forecast.get();
		}

		@Override
		public @Nullable DroughtReading drought() {
			return this.drought.get().orElse(null);
		}

		@Override
		public @Nullable GroundReading ground() {
			return this.ground.get().orElse(null);
		}

	}

	private List<DayFigures> observed(GeoPoint point, StationsAround around, LocalDate today) {
		return this.weather.unchecked(point, around, today.minusDays(LOOK_BACK), today.minusDays(1))
			.days()
			.stream()
			.map((day) -> new DayFigures(day.date(), day.minimum(), day.maximum(), day.rain(), null, null, null))
			.toList();
	}

	private static List<DayFigures> figures(Place place, Optional<Forecasts.Fresh> known) {
		return known.map((forecast) -> {
			double colder = LapseRate.colderBy(place.point(), forecast.station().point());
			double warmerNights = place.microclimate().minimumOffset();
			return forecast.days().stream().map((day) -> figures(day, colder, warmerNights)).toList();
		}).orElse(List.of());
	}

	private static DayFigures figures(ForecastDay day, double colder, double warmerNights) {
		return new DayFigures(day.day(), less(tenth(day.minimum()), colder - warmerNights),
				less(tenth(day.maximum()), colder), tenth(day.precipitation()), whole(day.snowfall()),
				tenth(day.wind()), whole(day.lowestHumidity()));
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
