package org.leafward.climate.core.state;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a day, observed or forecast; null where nothing is.
 *
 * @param day the day
 * @param minimum °C
 * @param maximum °C
 * @param rain mm, melted snow included
 * @param newSnow mm of depth
 * @param wind mean speed, m/s
 * @param lowestHumidity lowest relative humidity, percent
 */
public record DayFigures(LocalDate day, @Nullable Double minimum, @Nullable Double maximum, @Nullable Double rain,
		@Nullable Double newSnow, @Nullable Double wind, @Nullable Double lowestHumidity) {
}
