/**
 * The counties that the server is for: their shapes (GeoJSON, RFC 7946), which of them a
 * point lies in, and a map of them.
 */
@ApplicationModule(displayName = "Regions", allowedDependencies = { "knowledge", "measure", "pages" })
@NullMarked
package org.leafward.regions;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
