/**
 * Regional alerts: the weather is watched county by county, what a specialist should know
 * of becomes a proposal, and a proposal becomes an advisory for those whom it concerns.
 */
@ApplicationModule(displayName = "Advisories",
		allowedDependencies = { "lookalikes", "care", "care :: rule", "register", "regions", "regions :: shapes",
				"plants", "climate", "climate :: water", "accounts", "knowledge", "language", "measure", "pages",
				"pages :: print" })
@NullMarked
package org.leafward.advisories;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
