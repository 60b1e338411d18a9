/**
 * The word in time: due messages claimed from a table, sent once, recorded. Never decides
 * what is due in the garden.
 */
@ApplicationModule(displayName = "Reminders",
		allowedDependencies = { "advisories", "care", "register", "accounts", "knowledge", "language", "measure",
				"pages" })
@NullMarked
package org.leafward.reminders;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
