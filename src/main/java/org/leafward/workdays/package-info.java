/**
 * Volunteer groups and their workdays: which day, who comes, what is done, for how long.
 * Never dates a task itself, that is care's, and never talks to a mail server.
 */
@ApplicationModule(displayName = "Workdays",
		allowedDependencies = { "care", "care :: rule", "register", "climate", "accounts", "calendars", "measure",
				"pages", "pages :: print" })
@NullMarked
package org.leafward.workdays;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
