package org.leafward.care;

import java.time.LocalDate;
import java.util.List;
import org.leafward.care.core.plan.Observed;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Surroundings;
import org.leafward.register.Bed;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Planting;
import org.leafward.register.Site;
import org.leafward.register.SiteBeds;
import org.leafward.register.WateredDepths;

/**
 * All that the plan of a site is made from, but for rules and catalogue.
 *
 * @param site the site
 * @param beds its beds, by name
 * @param plantings its plantings, by label
 * @param observed what people saw there
 * @param waterings in the days of the water balance, mm by day
 * @param soilTests the latest of the whole site and of each bed
 * @param surroundings the stations and forecasts around it
 * @param today the day there
 */
record SiteInputs(Site site, List<Bed> beds, List<Planting> plantings, Observed observed, WateredDepths waterings,
		List<KeptSoilTest> soilTests, Surroundings surroundings, LocalDate today) {

	/** The site and its beds. */
	SiteBeds ground() {
		return new SiteBeds(this.site, this.beds);
	}

	/** The same site, if its nights were others. */
	SiteInputs at(Microclimate nights) {
		Site now = this.site;
		Site then = new Site(now.id(), now.owner(), now.name(), now.county(), now.point(), now.zone(), now.soil(),
				now.sun(), now.wind(), nights, now.region(), now.features(), now.litresPerMinute());
		return new SiteInputs(then, this.beds, this.plantings, this.observed, this.waterings, this.soilTests,
				this.surroundings, this.today);
	}

}
