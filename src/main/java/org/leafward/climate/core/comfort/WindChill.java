package org.leafward.climate.core.comfort;

import java.util.OptionalDouble;

/**
 * The wind chill of the US National Weather Service and Environment Canada, 2001. It is
 * defined up to 50 °F (10 °C) and from 3 miles per hour (4.8 km/h) of wind at 10 m. Both
 * forms have rounded coefficients of their own and differ by up to 0.05 degrees.
 */
public final class WindChill {

	private static final double WARMEST_FAHRENHEIT = 50;

	private static final double WARMEST_CELSIUS = 10;

	private static final double CALMEST_MILES = 3;

	private static final double CALMEST_KILOMETRES = 4.8;

	private static final double POWER = 0.16;

	private WindChill() {
	}

	/**
	 * The wind chill in °F.
	 * @param temperature air temperature, °F
	 * @param wind miles per hour at 10 m
	 * @return °F; empty where it isn't defined
	 */
	public static OptionalDouble fahrenheit(double temperature, double wind) {
		if (!(temperature <= WARMEST_FAHRENHEIT && wind >= CALMEST_MILES)) {
			return OptionalDouble.empty();
		}
		double power = Math.pow(wind, POWER);
		return OptionalDouble.of(35.74 + 0.6215 * temperature - 35.75 * power + 0.4275 * temperature * power);
	}

	/**
	 * The wind chill in °C.
	 * @param temperature air temperature, °C
	 * @param wind km/h at 10 m
	 * @return °C; empty where it isn't defined
	 */
	public static OptionalDouble celsius(double temperature, double wind) {
		if (!(temperature <= WARMEST_CELSIUS && wind >= CALMEST_KILOMETRES)) {
			return OptionalDouble.empty();
		}
		double power = Math.pow(wind, POWER);
		return OptionalDouble.of(13.12 + 0.6215 * temperature - 11.37 * power + 0.3965 * temperature * power);
	}

}
