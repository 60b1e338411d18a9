package org.leafward.climate.core.water;

import org.jspecify.annotations.Nullable;

/**
 * The weather of a day as far as it is known; null stands for what is not.
 *
 * @param day of the year, 1 to 366
 * @param minimum temperature, °C
 * @param maximum temperature, °C; where it lies below the minimum, which damaged records
 * have, the two change places
 * @param humidity of the air
 * @param sunlight of the day
 * @param wind mean of the day
 */
public record WeatherDay(int day, double minimum, double maximum, @Nullable Humidity humidity,
		@Nullable Sunlight sunlight, @Nullable Wind wind) {

	public WeatherDay {
		Bounds.day(day);
		double low = Math.min(Bounds.celsius(minimum), Bounds.celsius(maximum));
		maximum = Math.max(minimum, maximum);
		minimum = low;
	}

	/**
	 * A day of which the temperatures are known and nothing else.
	 * @param day of the year
	 * @param minimum °C
	 * @param maximum °C
	 * @return the day
	 */
	public static WeatherDay ofTemperatures(int day, double minimum, double maximum) {
		return new WeatherDay(day, minimum, maximum, null, null, null);
	}

	public double mean() {
		return (this.minimum + this.maximum) / 2;
	}

}
