/**
 * Water between air, plant and soil: evapotranspiration, plant factors and the balance of
 * the root zone, after FAO Irrigation and Drainage Paper 56. Numbers in, numbers out.
 */
@NamedInterface("water")
@NullMarked
package org.leafward.climate.core.water;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
