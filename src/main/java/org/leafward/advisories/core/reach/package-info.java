/**
 * Counting what grows: plantings, sites and people by county and plant group.
 */
@NullMarked
package org.leafward.advisories.core.reach;

import org.jspecify.annotations.NullMarked;
