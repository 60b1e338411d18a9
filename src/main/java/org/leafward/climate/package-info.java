/**
 * Weather stations and what their daily record says about a place. Knows no site and no
 * plant.
 */
@ApplicationModule(displayName = "Climate", allowedDependencies = { "measure", "pages" })
@NullMarked
package org.leafward.climate;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
