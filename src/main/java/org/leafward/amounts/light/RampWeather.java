package org.leafward.amounts.light;

import org.jspecify.annotations.Nullable;

/**
 * What is forecast, or was seen, for a day of a ramp; null where it isn't known.
 *
 * @param minimumCelsius lowest temperature of the night that follows the day, °C
 * @param maximumCelsius highest temperature of the day, °C
 * @param windKmh wind of the day, km/h
 */
public record RampWeather(@Nullable Double minimumCelsius, @Nullable Double maximumCelsius, @Nullable Double windKmh) {

	/** Nothing is known. */
	public static final RampWeather UNKNOWN = new RampWeather(null, null, null);

}
