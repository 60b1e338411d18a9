/** How warmth goes down into the soil. */
@NullMarked
package org.leafward.climate.core.soil;

import org.jspecify.annotations.NullMarked;
