/**
 * Workdays of volunteer groups: who comes when, what is done on which day and where, and
 * what the weather has to say about it.
 */
@ApplicationModule(displayName = "Workdays",
		allowedDependencies = { "care", "care :: rule", "register", "climate", "climate :: comfort", "plants",
				"accounts", "knowledge", "language", "pages", "pages :: print", "measure" })
@NullMarked
package org.leafward.workdays;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
