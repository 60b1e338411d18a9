/**
 * The calendar without an account: from a place and its plants to the address of a feed
 * in a few steps.
 */
@ApplicationModule(displayName = "Quick calendar",
		allowedDependencies = { "feeds", "care", "register", "regions", "accounts", "plants", "climate", "language",
				"measure", "pages" })
@NullMarked
package org.leafward.quick;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
