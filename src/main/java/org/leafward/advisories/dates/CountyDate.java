package org.leafward.advisories.dates;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.regions.County;

/**
 * When a season marker comes in a county.
 *
 * @param marker which
 * @param county where
 * @param early one year in ten is earlier; null when the stations can't tell
 * @param date the middle: as many years are earlier as are later
 * @param late one year in ten is later
 * @param missing why there is no date; null when there is one
 */
public record CountyDate(SeasonDate marker, County county, @Nullable LocalDate early, @Nullable LocalDate date,
		@Nullable LocalDate late, @Nullable String missing) {
}
