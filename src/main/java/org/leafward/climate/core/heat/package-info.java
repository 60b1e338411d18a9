/** Degree-days of days and seasons: numbers in, numbers out. */
@NullMarked
package org.leafward.climate.core.heat;

import org.jspecify.annotations.NullMarked;
