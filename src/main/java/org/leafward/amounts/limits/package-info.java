/** Where and when local rules allow watering, from {@code config/watering}. */
@NamedInterface("limits")
@NullMarked
package org.leafward.amounts.limits;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
