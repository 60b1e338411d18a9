package org.leafward.demo;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.care.Replanning;
import org.leafward.counties.ModelGardens;
import org.leafward.register.Bed;
import org.leafward.register.Beds;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilTests;
import org.leafward.register.Waterings;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * Fills an empty server with the invented region. A server that knows anybody is left
 * alone but for the weather since.
 */
@Component
@Profile("demo")
class DemoSeed implements ApplicationRunner {

	private static final Logger LOG = LoggerFactory.getLogger(DemoSeed.class);

	/** More than the balance of water can bridge. */
	private static final int LATE_DAYS = 20;

	private static final int MOST_SITES = 100;

	private final People people;

	private final Roles roles;

	private final DemoWeather weather;

	private final Register register;

	private final Waterings waterings;

	private final Beds beds;

	private final SoilTests soilTests;

	private final Replanning replanning;

	private final DemoCare care;

	private final DemoPublication publication;

	private final ModelGardens gardens;

	private final DemoGroup group;

	private final DemoAdvisories advisories;

	private final DemoCases cases;

	DemoSeed(People people, Roles roles, DemoWeather weather, Register register, Waterings waterings,
			SoilTests soilTests, Replanning replanning, DemoCare care, DemoPublication publication,
			ModelGardens gardens, DemoGroup group, DemoAdvisories advisories, DemoCases cases, Beds beds) {
		this.people = people;
		this.roles = roles;
		this.weather = weather;
		this.register = register;
		this.waterings = waterings;
		this.beds = beds;
		this.soilTests = soilTests;
		this.replanning = replanning;
		this.care = care;
		this.publication = publication;
		this.gardens = gardens;
		this.group = group;
		this.advisories = advisories;
		this.cases = cases;
	}

	@Override
	public void run(ApplicationArguments arguments) {
		if (!this.people.list(0, 1).isEmpty()) {
			this.weather.catchUp();
			this.gardens.tend();
			return;
		}
		// Before there are sites, so that their tasks need no second derivation.
		this.publication.publish();
		LocalDate today = this.weather.today();
		this.weather.begin(today.minusDays(LATE_DAYS));
		for (DemoRegion.DemoPerson one : DemoRegion.people(setOut())) {
			PersonId person = this.people.join(one.name(), one.email(), DemoRegion.zone()).id();
			this.people.confirm(person);
			one.counties().forEach((county) -> this.roles.grant(person, Role.SPECIALIST, county));
			if (one.coordinates()) {
				this.roles.grant(person, Role.COORDINATOR, "");
			}
			for (DemoRegion.DemoSite place : one.sites()) {
				Site site = this.register.addSite(person, place.site());
				List<Planting> plantings = this.register.addPlantings(site.id(), place.plantings());
				for (DemoBeds.DemoBed part : DemoBeds.of(site.name())) {
					Bed bed = this.beds.add(site.id(), part.bed());
					plantings.stream()
						.filter((planting) -> part.labels().contains(planting.label()))
						.forEach((planting) -> this.beds.put(planting.id(), bed.id()));
				}
				DemoWaterings.of(site.name(), plantings, today)
					.forEach((watering) -> this.waterings.record(site.id(), watering, person));
				DemoSoilTests.of(site.name(), plantings, today)
					.forEach((test) -> this.soilTests.keep(site.id(), test, person));
				this.care.tell(site, plantings, person, today);
			}
		}
		// As on a server that has run for a while: the weather comes in after the plants,
		// so that it withdraws some tasks and calls for others.
		this.weather.catchUp();
		this.register.idsAfter(null, MOST_SITES).forEach(this.replanning::derive);
		this.group.meet(today);
		this.gardens.tend();
		this.advisories.send(today);
		this.cases.open(today);
		LOG.info("The invented region is ready");
	}

	/** Tender seedlings go out in the coming May, whenever the demo is started. */
	private LocalDate setOut() {
		LocalDate today = this.weather.today();
		int year = (today.getMonthValue() > Month.MARCH.getValue()) ? today.getYear() + 1 : today.getYear();
		return LocalDate.of(year, Month.MAY, 16);
	}

}
