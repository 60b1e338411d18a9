/**
 * Calendars of counties for everybody: a model garden for each county, and documents of
 * kinds of plants in it.
 */
@ApplicationModule(displayName = "County calendars",
		allowedDependencies = { "advisories", "feeds", "feeds :: core", "feeds :: ical", "feeds :: http", "quick",
				"quick :: drawers", "calendars", "care", "register", "regions", "accounts", "plants", "climate",
				"language", "measure", "pages" })
@NullMarked
package org.leafward.counties;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
