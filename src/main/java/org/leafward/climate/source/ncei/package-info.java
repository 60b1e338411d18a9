/** Fetches daily records from the data service of NOAA's NCEI. */
@NullMarked
package org.leafward.climate.source.ncei;

import org.jspecify.annotations.NullMarked;
