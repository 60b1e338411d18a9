/**
 * The invented region shown under the profile demo. Nothing else may depend on it.
 */
@ApplicationModule(displayName = "Demo",
		allowedDependencies = { "accounts", "climate", "plants", "register", "care", "care :: workshop", "reminders",
				"feeds", "counties", "workdays", "measure", "pages", "advisories", "advisories :: desk",
				"advisories :: chain", "lookalikes", "lookalikes :: core" })
@NullMarked
package org.leafward.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
