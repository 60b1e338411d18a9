/**
 * iCalendar subscriptions: documents built ahead, stored, served with validators. Never
 * builds a calendar per request.
 */
@ApplicationModule(displayName = "Feeds",
		allowedDependencies = { "advisories", "workdays", "care", "register", "accounts", "calendars", "language",
				"measure", "pages" })
@NullMarked
package org.leafward.feeds;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
