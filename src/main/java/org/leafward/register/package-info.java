/**
 * Sites and plantings: what grows where, and whose it is.
 */
@ApplicationModule(displayName = "Register",
		allowedDependencies = { "accounts", "plants", "climate", "regions", "measure", "pages", "pages :: photo" })
@NullMarked
package org.leafward.register;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
