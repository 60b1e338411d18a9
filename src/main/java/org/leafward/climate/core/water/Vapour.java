package org.leafward.climate.core.water;

/**
 * Pressure of the air and of the water vapour in it. Source of all formulas: FAO
 * Irrigation and Drainage Paper 56 (Allen, Pereira, Raes and Smith 1998), chapter 3, by
 * equation number. Every method throws {@link IllegalArgumentException} for temperatures
 * outside -160 to 125 °C and humidities outside 0 to 100 %.
 */
public final class Vapour {

	private Vapour() {
	}

	/**
	 * Mean pressure of the air at a height, equation 7.
	 * @param metres above sea level, -430 to 8850
	 * @return kPa
	 */
	public static double pressure(double metres) {
		Bounds.check("height in m", metres, -430, 8850);
		return 101.3 * Math.pow((293 - 0.0065 * metres) / 293, 5.26);
	}

	/**
	 * Psychrometric constant, equation 8.
	 * @param pressure of the air, kPa
	 * @return kPa/°C
	 */
	public static double psychrometricConstant(double pressure) {
		return 0.665e-3 * pressure;
	}

	/**
	 * Saturation vapour pressure, equation 11.
	 * @param celsius temperature
	 * @return kPa
	 */
	public static double saturation(double celsius) {
		Bounds.celsius(celsius);
		return 0.6108 * Math.exp(17.27 * celsius / (celsius + 237.3));
	}

	/**
	 * Mean saturation vapour pressure of a day, equation 12: the mean of those at both
	 * extremes, which is more than that at the mean temperature.
	 * @param minimum °C
	 * @param maximum °C
	 * @return kPa
	 */
	public static double meanSaturation(double minimum, double maximum) {
		return (saturation(minimum) + saturation(maximum)) / 2;
	}

	/**
	 * Slope of the saturation curve, equation 13.
	 * @param celsius temperature
	 * @return kPa/°C
	 */
	public static double slope(double celsius) {
		return 4098 * saturation(celsius) / ((celsius + 237.3) * (celsius + 237.3));
	}

	/**
	 * Vapour pressure from the dew point, equation 14; with the minimum temperature in
	 * its place, equation 48.
	 * @param celsius dew point
	 * @return kPa
	 */
	public static double fromDewPoint(double celsius) {
		return saturation(celsius);
	}

	/**
	 * Vapour pressure from a dry and a wet thermometer, equations 15 and 16.
	 * @param wet °C
	 * @param dry °C, not below {@code wet}
	 * @param pressure of the air, kPa
	 * @param psychrometer how the thermometers are aired
	 * @return kPa, not below 0
	 */
	public static double fromWetBulb(double wet, double dry, double pressure, Psychrometer psychrometer) {
		Bounds.check("dry thermometer in °C", dry, wet, 125);
		return Math.max(0, saturation(wet) - psychrometer.coefficient() * pressure * (dry - wet));
	}

	/**
	 * Vapour pressure from both extremes of temperature and relative humidity, equation
	 * 17.
	 * @param minimum °C
	 * @param maximum °C
	 * @param lowest relative humidity, %
	 * @param highest relative humidity, %
	 * @return kPa
	 */
	public static double fromHumidity(double minimum, double maximum, double lowest, double highest) {
		return (saturation(minimum) * Bounds.percent(highest) + saturation(maximum) * Bounds.percent(lowest)) / 200;
	}

	/**
	 * Vapour pressure from the highest relative humidity alone, equation 18.
	 * @param minimum °C
	 * @param highest relative humidity, %
	 * @return kPa
	 */
	public static double fromHighestHumidity(double minimum, double highest) {
		return saturation(minimum) * Bounds.percent(highest) / 100;
	}

	/**
	 * Vapour pressure from the mean relative humidity alone, equation 19.
	 * @param minimum °C
	 * @param maximum °C
	 * @param mean relative humidity, %
	 * @return kPa
	 */
	public static double fromMeanHumidity(double minimum, double maximum, double mean) {
		return meanSaturation(minimum, maximum) * Bounds.percent(mean) / 100;
	}

	/**
	 * Vapour pressure deficit.
	 * @param saturation mean saturation vapour pressure, kPa
	 * @param actual vapour pressure, kPa
	 * @return kPa, not below 0
	 */
	public static double deficit(double saturation, double actual) {
		return Math.max(0, saturation - actual);
	}

	/** Ways to air a psychrometer, with the coefficient of equation 16, 1/°C. */
	public enum Psychrometer {

		/** Aspirated, air moving at about 5 m/s. */
		ASPIRATED(0.000662),

		/** Naturally aired, air moving at about 1 m/s. */
		NATURAL(0.0008),

		/** Not aired, indoors. */
		INDOOR(0.0012);

		private final double coefficient;

		Psychrometer(double coefficient) {
			this.coefficient = coefficient;
		}

		public double coefficient() {
			return this.coefficient;
		}

	}

}
