package org.leafward.climate.core.comfort;

/**
 * The heat index of the US National Weather Service: Rothfusz's regression with its
 * adjustments, https://www.wpc.ncep.noaa.gov/html/heatindex_equation.shtml.
 * <p>
 * The page takes a simple formula first and the regression when the mean of that and the
 * temperature reaches 80 °F. Implementations differ in what they give below: here it is
 * the simple formula, which already is a mean with the temperature. At 40 °F and below
 * the heat index is the temperature (from memory of the Service's own code). So the value
 * jumps by up to about a degree where the formulas meet.
 */
public final class HeatIndex {

	private static final double REGRESSION_FROM = 80;

	private static final double COLD = 40;

	private HeatIndex() {
	}

	/**
	 * The heat index in °F.
	 * @param temperature air temperature in the shade, -100 to 150 °F
	 * @param humidity relative humidity, 0 to 100 %
	 * @return °F
	 * @throws IllegalArgumentException outside the bounds
	 */
	public static double fahrenheit(double temperature, double humidity) {
		if (!(temperature >= -100 && temperature <= 150 && humidity >= 0 && humidity <= 100)) {
			throw new IllegalArgumentException(
					"no heat index of %s °F and %s %% humidity".formatted(temperature, humidity));
		}
		if (temperature <= COLD) {
			return temperature;
		}
		double simple = 0.5 * (temperature + 61 + (temperature - 68) * 1.2 + 0.094 * humidity);
		if ((simple + temperature) / 2 < REGRESSION_FROM) {
			return simple;
		}
		return regression(temperature, humidity) + adjustment(temperature, humidity);
	}

	/**
	 * The heat index in °C.
	 * @param temperature air temperature in the shade, °C
	 * @param humidity relative humidity, 0 to 100 %
	 * @return °C
	 * @throws IllegalArgumentException outside -73.3 to 65.5 °C
	 */
	public static double celsius(double temperature, double humidity) {
		return (fahrenheit(temperature * 1.8 + 32, humidity) - 32) / 1.8;
	}

	/** Rothfusz's regression alone, °F. */
	static double regression(double t, double r) {
		return -42.379 + 2.04901523 * t + 10.14333127 * r - 0.22475541 * t * r - 6.83783e-3 * t * t
				- 5.481717e-2 * r * r + 1.22874e-3 * t * t * r + 8.5282e-4 * t * r * r - 1.99e-6 * t * t * r * r;
	}

	private static double adjustment(double t, double r) {
		if (r < 13 && t >= 80 && t <= 112) {
			return -(13 - r) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17);
		}
		return (r > 85 && t >= 80 && t <= 87) ? (r - 85) / 10 * ((87 - t) / 5) : 0;
	}

}
