/**
 * The species catalogue from config/plants, held in memory and swapped whole. Light
 * module: flat but for web.
 */
@ApplicationModule(displayName = "Plants", allowedDependencies = { "measure", "knowledge", "language", "pages" })
@NullMarked
package org.leafward.plants;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
