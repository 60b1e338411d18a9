package org.leafward.climate;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A day at a place, observed or forecast; null where nothing is known.
 *
 * @param day the day
 * @param minimum °C
 * @param maximum °C
 * @param rain mm, melted snow included
 * @param newSnow depth of new snow, mm; forecast days only
 * @param snowDepth depth of snow on the ground, mm; observed days only
 * @param wind mean speed of the day, m/s
 * @param lowestHumidity lowest relative humidity, percent; forecast days only
 * @param upperSoil modelled temperature of the upper two inches of bare soil, °C;
 * observed days only
 * @param soil the same at 4 inches
 */
public record PlaceDay(LocalDate day, @Nullable Double minimum, @Nullable Double maximum, @Nullable Double rain,
		@Nullable Double newSnow, @Nullable Double snowDepth, @Nullable Double wind, @Nullable Double lowestHumidity,
		@Nullable Double upperSoil, @Nullable Double soil) {
}
