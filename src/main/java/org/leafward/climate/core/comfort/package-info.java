/** How heat and cold feel to the people who work outside. */
@NamedInterface("comfort")
@NullMarked
package org.leafward.climate.core.comfort;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
