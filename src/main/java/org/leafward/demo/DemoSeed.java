package org.leafward.demo;

import java.time.Clock;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.climate.Forecasts;
import org.leafward.climate.Observations;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.Waterings;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * Fills an empty server with the invented region. A server that knows anybody is left
 * alone.
 */
@Component
@Profile("demo")
class DemoSeed implements ApplicationRunner {

	private static final Logger LOG = LoggerFactory.getLogger(DemoSeed.class);

	private static final int FORECAST_DAYS = 7;

	private final People people;

	private final Stations stations;

	private final Observations observations;

	private final Forecasts forecasts;

	private final Register register;

	private final Waterings waterings;

	private final DemoPublication publication;

	private final Clock clock;

	DemoSeed(People people, Stations stations, Observations observations, Forecasts forecasts, Register register,
			Waterings waterings, DemoPublication publication, Clock clock) {
		this.people = people;
		this.stations = stations;
		this.observations = observations;
		this.forecasts = forecasts;
		this.register = register;
		this.waterings = waterings;
		this.publication = publication;
		this.clock = clock;
	}

	@Override
	public void run(ApplicationArguments arguments) {
		if (!this.people.list(0, 1).isEmpty()) {
			return;
		}
		// Before there are sites, so that their tasks need no second derivation.
		this.publication.publish();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), DemoRegion.zone());
		InventedWeather weather = new InventedWeather(DemoRegion.SEED);
		List<DemoRegion.DemoStation> all = DemoRegion.stations();
		for (int i = 0; i < all.size(); i++) {
			// What the made-up weather goes on with is the made-up forecast.
			List<ObservedDay> days = weather.record(i, all.get(i).character(), today.plusDays(FORECAST_DAYS - 1));
			StationId id = all.get(i).station().id();
			this.stations.register(all.get(i).station());
			this.observations.load(id, days.stream().filter((day) -> day.day().isBefore(today)).toList());
			this.forecasts.upload(id,
					InventedForecast.of(days.subList(days.size() - FORECAST_DAYS, days.size()), this.clock.instant()));
		}
		for (DemoRegion.DemoPerson one : DemoRegion.people(setOut())) {
			PersonId person = this.people.join(one.name(), one.email(), DemoRegion.zone()).id();
			for (DemoRegion.DemoSite place : one.sites()) {
				Site site = this.register.addSite(person, place.site());
				List<Planting> plantings = this.register.addPlantings(site.id(), place.plantings());
				DemoWaterings.of(site.name(), plantings, today)
					.forEach((watering) -> this.waterings.record(site.id(), watering, person));
			}
		}
		LOG.info("The invented region is ready");
	}

	/** Tender seedlings go out in the coming May, whenever the demo is started. */
	private LocalDate setOut() {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), DemoRegion.zone());
		int year = (today.getMonthValue() > Month.MARCH.getValue()) ? today.getYear() + 1 : today.getYear();
		return LocalDate.of(year, Month.MAY, 16);
	}

}
