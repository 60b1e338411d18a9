/**
 * The heart: rules become task windows, task windows become tasks, and every date keeps
 * its explanation. The pure part is in core.
 */
@ApplicationModule(displayName = "Care",
		allowedDependencies = { "register", "plants", "climate", "climate :: water", "amounts", "amounts :: water",
				"amounts :: salt", "amounts :: light", "amounts :: cover", "amounts :: limits", "amounts :: soiltest",
				"amounts :: calculator", "accounts", "knowledge", "language", "measure", "pages", "pages :: print" })
@NullMarked
package org.leafward.care;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
