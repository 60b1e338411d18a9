package org.leafward.climate;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a station measured on a day, in the units of GHCN-Daily; null where it didn't.
 *
 * @param day the day, 1700 to 2199
 * @param minimum tenths of °C
 * @param maximum tenths of °C
 * @param precipitation tenths of mm
 * @param snowDepth mm
 * @param wind mean speed, tenths of m/s
 */
public record ObservedDay(LocalDate day, @Nullable Integer minimum, @Nullable Integer maximum,
		@Nullable Integer precipitation, @Nullable Integer snowDepth, @Nullable Integer wind) {
}
