/**
 * How much: water, leaching, gypsum, light and cover for one piece of care, computed from
 * figures that are handed in. Knows no site, no planting and no task, and reads nothing;
 * all but the calculator pages is pure.
 */
@ApplicationModule(displayName = "Amounts",
		allowedDependencies = { "measure", "knowledge", "climate :: water", "climate :: light", "pages" })
@NullMarked
package org.leafward.amounts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
