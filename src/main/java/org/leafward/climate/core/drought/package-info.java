/**
 * Drought as a station's rain tells it: the Standardized Precipitation Index and the
 * classes D0 to D4. The only package that knows the library commons-statistics.
 */
@NullMarked
package org.leafward.climate.core.drought;

import org.jspecify.annotations.NullMarked;
