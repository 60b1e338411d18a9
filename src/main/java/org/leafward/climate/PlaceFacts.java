package org.leafward.climate;

import java.time.LocalTime;
import java.time.Month;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;

/**
 * What a place is like, in figures that gardeners know. All of them are estimates.
 *
 * @param extremeMinimum mean of the lowest minimum of each winter at the place, °C; null
 * when not known
 * @param zone hardiness half zone after the USDA's bands, for example "6b"; null when not
 * known
 * @param whyNoZone the reason when there is none, or null
 * @param dayLength time between sunrise and sunset today, minutes; null in the polar day
 * and night, {@code sun} tells
 * @param sunrise of today, or null
 * @param sunset of today, or null
 * @param sun a sentence about today's sun
 * @param light by month
 * @param explanation how the figures came about
 */
public record PlaceFacts(@Nullable Double extremeMinimum, @Nullable String zone, @Nullable String whyNoZone,
		@Nullable Long dayLength, @Nullable LocalTime sunrise, @Nullable LocalTime sunset, String sun,
		List<MonthLight> light, Explanation explanation) {

	public PlaceFacts {
		light = List.copyOf(light);
	}

	/**
	 * The light of a month, daily light integral in the open, mol/m² a day.
	 *
	 * @param month the month
	 * @param clear under a clear sky in its middle
	 * @param typical mean of past years, estimated from temperatures; null when not known
	 * @param morning what of the typical light, or else of the clear one, has come by
	 * 10:30
	 */
	public record MonthLight(Month month, double clear, @Nullable Double typical, double morning) {
	}

}
