package org.leafward.care;

import java.time.LocalDate;
import java.util.List;
import org.leafward.care.core.plan.Observed;
import org.leafward.climate.Surroundings;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Planting;
import org.leafward.register.Site;
import org.leafward.register.WateredDepths;

/**
 * All that the plan of a site is made from, but for rules and catalogue.
 *
 * @param site the site
 * @param plantings its plantings, by label
 * @param observed what people saw there
 * @param waterings in the days of the water balance, mm by day
 * @param soilTests the latest of the whole site and of each bed
 * @param surroundings the stations and forecasts around it
 * @param today the day there
 */
record SiteInputs(Site site, List<Planting> plantings, Observed observed, WateredDepths waterings,
		List<KeptSoilTest> soilTests, Surroundings surroundings, LocalDate today) {
}
