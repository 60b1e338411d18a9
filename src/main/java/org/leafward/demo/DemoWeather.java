package org.leafward.demo;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.leafward.climate.Forecasts;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Observations;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.springframework.context.annotation.Profile;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * The weather of the invented region: its past, which grows from day to day as on a
 * server whose stations report, and a forecast, which is what the made-up weather goes on
 * with. The same day has the same weather whenever it is made up.
 */
@Component
@Profile("demo")
@EnableScheduling
class DemoWeather {

	private static final int FORECAST_DAYS = 7;

	private final Stations stations;

	private final Observations observations;

	private final Forecasts forecasts;

	private final Clock clock;

	private final InventedWeather weather = new InventedWeather(DemoRegion.SEED);

	DemoWeather(Stations stations, Observations observations, Forecasts forecasts, Clock clock) {
		this.stations = stations;
		this.observations = observations;
		this.forecasts = forecasts;
		this.clock = clock;
	}

	/** The day that it is in the region. */
	LocalDate today() {
		return LocalDate.ofInstant(this.clock.instant(), DemoRegion.zone());
	}

	/**
	 * Registers the stations with all their weather before a day.
	 * @param end the first day that is left out
	 */
	void begin(LocalDate end) {
		List<DemoRegion.DemoStation> all = DemoRegion.stations();
		for (int i = 0; i < all.size(); i++) {
			this.stations.register(all.get(i).station());
			this.observations.load(all.get(i).station().id(), days(i, LocalDate.MIN, end));
		}
	}

	/** Loads what is missing up to yesterday, with a new forecast. */
	@Scheduled(cron = "0 10 * * * *", zone = "UTC")
	void catchUp() {
		LocalDate today = today();
		List<DemoRegion.DemoStation> all = DemoRegion.stations();
		for (int i = 0; i < all.size(); i++) {
			StationId id = all.get(i).station().id();
			Optional<LocalDate> last = this.observations.lastDay(id);
			if (last.isPresent() && last.get().isBefore(today.minusDays(1))) {
				this.observations.load(id, days(i, last.get().plusDays(1), today));
			}
			if (last.isPresent() && !foretold(id, today)) {
				this.forecasts.upload(id, InventedForecast.of(days(i, today, LocalDate.MAX), this.clock.instant()));
			}
		}
	}

	private boolean foretold(StationId id, LocalDate today) {
		return this.forecasts.of(id)
			.filter((forecast) -> !LocalDate.ofInstant(forecast.issuedAt(), DemoRegion.zone()).isBefore(today))
			.isPresent();
	}

	private List<ObservedDay> days(int number, LocalDate from, LocalDate end) {
		return this.weather
			.record(number, DemoRegion.stations().get(number).character(), today().plusDays(FORECAST_DAYS - 1))
			.stream()
			.filter((day) -> !day.day().isBefore(from) && day.day().isBefore(end))
			.toList();
	}

}
