/** Outside formats of weather data, one folder each. */
@NullMarked
package org.leafward.climate.source;

import org.jspecify.annotations.NullMarked;
