package org.leafward.climate;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is forecast for a day at a station, in the units of {@link ObservedDay}; null
 * where nothing is.
 *
 * @param day the day there
 * @param minimum tenths of °C
 * @param maximum tenths of °C
 * @param precipitation tenths of mm; on the day of issue what is still to come
 * @param snowfall depth of new snow, mm, likewise
 * @param wind mean speed, tenths of m/s
 * @param lowestHumidity lowest relative humidity, percent
 */
public record ForecastDay(LocalDate day, @Nullable Integer minimum, @Nullable Integer maximum,
		@Nullable Integer precipitation, @Nullable Integer snowfall, @Nullable Integer wind,
		@Nullable Integer lowestHumidity) {
}
