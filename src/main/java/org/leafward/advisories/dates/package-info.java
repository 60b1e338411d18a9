/**
 * Dates of the season by county, for tables and pictures.
 */
@NullMarked
package org.leafward.advisories.dates;

import org.jspecify.annotations.NullMarked;
