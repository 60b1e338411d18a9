/** The cold of the worst night of a year, and the zone that gardeners name after it. */
@NullMarked
package org.leafward.climate.core.extreme;

import org.jspecify.annotations.NullMarked;
