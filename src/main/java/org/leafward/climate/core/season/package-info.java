/** A season as far as it has come, beside what is normal there. */
@NullMarked
package org.leafward.climate.core.season;

import org.jspecify.annotations.NullMarked;
