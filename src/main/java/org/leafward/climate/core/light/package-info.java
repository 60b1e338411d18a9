/** Where the sun stands, and how much light a day, a part of it or a room has. */
@NamedInterface("light")
@NullMarked
package org.leafward.climate.core.light;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
