/**
 * From the light that a plant has to the light that it will have, a day at a time.
 */
@NamedInterface("light")
@NullMarked
package org.leafward.amounts.light;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
