/**
 * Tells injuries apart that look alike: a key of causes and what speaks for each, the
 * questions that part them, and what the site's own record says. Never states a diagnosis
 * as certain, and never names a pesticide.
 */
@ApplicationModule(displayName = "Look-alikes",
		allowedDependencies = { "care", "care :: rule", "register", "plants", "climate", "regions", "accounts",
				"knowledge", "language", "measure", "pages", "pages :: print", "pages :: photo" })
@NullMarked
package org.leafward.lookalikes;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
