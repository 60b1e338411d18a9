/** Reads forecasts: the US National Weather Service's grid and a plain CSV. */
@NullMarked
package org.leafward.climate.source.forecast;

import org.jspecify.annotations.NullMarked;
