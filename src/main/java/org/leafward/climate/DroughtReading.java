package org.leafward.climate;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;

/**
 * How dry it is at a station by its own rain over 90 days. It is not the weekly drought
 * map, which weighs more than rain.
 *
 * @param lastDay last of the 90 days
 * @param index standardized precipitation index, -3 (dry) to 3 (wet)
 * @param severity 0 to 4 for D0 to D4; null when it isn't dry
 * @param words for example "moderate drought (D1)" or "no drought"
 * @param explanation how it came about
 */
public record DroughtReading(LocalDate lastDay, double index, @Nullable Integer severity, String words,
		Explanation explanation) {
}
