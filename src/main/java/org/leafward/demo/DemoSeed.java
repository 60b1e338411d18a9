package org.leafward.demo;

import java.time.Clock;
import java.time.LocalDate;
import java.time.Month;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.Replanning;
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

	/** More than the balance of water can bridge. */
	private static final int LATE_DAYS = 20;

	private static final int MOST_SITES = 100;

	private final People people;

	private final Stations stations;

	private final Observations observations;

	private final Forecasts forecasts;

	private final Register register;

	private final Waterings waterings;

	private final Replanning replanning;

	private final DemoCare care;

	private final DemoPublication publication;

	private final Clock clock;

	DemoSeed(People people, Stations stations, Observations observations, Forecasts forecasts, Register register,
			Waterings waterings, Replanning replanning, DemoCare care, DemoPublication publication, Clock clock) {
		this.people = people;
		this.stations = stations;
		this.observations = observations;
		this.forecasts = forecasts;
		this.register = register;
		this.waterings = waterings;
		this.replanning = replanning;
		this.care = care;
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
		Map<StationId, List<ObservedDay>> late = new LinkedHashMap<>();
		List<DemoRegion.DemoStation> all = DemoRegion.stations();
		for (int i = 0; i < all.size(); i++) {
			// What the made-up weather goes on with is the made-up forecast.
			List<ObservedDay> days = weather.record(i, all.get(i).character(), today.plusDays(FORECAST_DAYS - 1));
			StationId id = all.get(i).station().id();
			this.stations.register(all.get(i).station());
			this.observations.load(id, between(days, LocalDate.MIN, today.minusDays(LATE_DAYS)));
			late.put(id, between(days, today.minusDays(LATE_DAYS), LocalDate.MAX));
		}
		for (DemoRegion.DemoPerson one : DemoRegion.people(setOut())) {
			PersonId person = this.people.join(one.name(), one.email(), DemoRegion.zone()).id();
			for (DemoRegion.DemoSite place : one.sites()) {
				Site site = this.register.addSite(person, place.site());
				List<Planting> plantings = this.register.addPlantings(site.id(), place.plantings());
				DemoWaterings.of(site.name(), plantings, today)
					.forEach((watering) -> this.waterings.record(site.id(), watering, person));
				this.care.tell(site, plantings, person, today);
			}
		}
		// As on a server that has run for a while: the weather comes in after the plants,
		// so that it withdraws some tasks and calls for others.
		late.forEach((id, days) -> {
			this.observations.load(id, between(days, LocalDate.MIN, today));
			this.forecasts.upload(id, InventedForecast.of(between(days, today, LocalDate.MAX), this.clock.instant()));
		});
		this.register.idsAfter(null, MOST_SITES).forEach(this.replanning::derive);
		LOG.info("The invented region is ready");
	}

	private static List<ObservedDay> between(List<ObservedDay> days, LocalDate from, LocalDate end) {
		return days.stream().filter((day) -> !day.day().isBefore(from) && day.day().isBefore(end)).toList();
	}

	/** Tender seedlings go out in the coming May, whenever the demo is started. */
	private LocalDate setOut() {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), DemoRegion.zone());
		int year = (today.getMonthValue() > Month.MARCH.getValue()) ? today.getYear() + 1 : today.getYear();
		return LocalDate.of(year, Month.MAY, 16);
	}

}
