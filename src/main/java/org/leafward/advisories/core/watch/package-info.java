/**
 * What the watch looks out for: markers, weather and forecast of a county in, hits with
 * their figures and reasons out.
 */
@NullMarked
package org.leafward.advisories.core.watch;

import org.jspecify.annotations.NullMarked;
