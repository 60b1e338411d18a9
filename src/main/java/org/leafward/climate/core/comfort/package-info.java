/** How heat and cold feel to the people who work outside. */
@NullMarked
package org.leafward.climate.core.comfort;

import org.jspecify.annotations.NullMarked;
