package org.leafward.care;

import java.time.LocalDate;
import org.leafward.care.core.plan.WeatherAnswers;
import org.leafward.register.Site;

/** What the weather of sites is like, for the rules that ask. */
@FunctionalInterface
public interface SiteWeather {

	/**
	 * The weather of a site.
	 * @param site the site
	 * @param today the day there
	 * @return answers; they are worked out when they are asked for, and good for as long
	 * as one plan takes
	 */
	WeatherAnswers at(Site site, LocalDate today);

}
