package org.leafward.climate.core.water;

import java.util.Set;

/**
 * Reference evapotranspiration of a day, with what it was made from.
 * <p>
 * The choice: Penman-Monteith as soon as humidity, light or wind is known, with the
 * substitutes of FAO-56 for the rest; Hargreaves-Samani when there are temperatures only.
 * FAO-56 itself would rather have Penman-Monteith with substitutes even then
 * ({@link #penmanMonteith}); with three of four inputs made up, the plainer formula says
 * more openly what it stands on.
 *
 * @param millimetres mm, not below 0
 * @param method which formula
 * @param substitutes what stood in for missing values; none with Hargreaves-Samani, which
 * needs temperatures only
 */
public record ReferenceEt(double millimetres, Method method, Set<Substitute> substitutes) {

	public ReferenceEt {
		substitutes = Set.copyOf(substitutes);
	}

	/**
	 * Computes a day by the formula that fits what is known.
	 * @param weather the day
	 * @param ground the place
	 * @return the amount
	 * @throws IllegalArgumentException when a value is out of its bounds
	 */
	public static ReferenceEt of(WeatherDay weather, Ground ground) {
		boolean onlyTemperatures = weather.humidity() == null && weather.sunlight() == null && weather.wind() == null;
		return onlyTemperatures ? hargreavesSamani(weather, ground) : penmanMonteith(weather, ground);
	}

	/**
	 * Computes a day by Penman-Monteith, whatever is missing. Heat into the ground counts
	 * nothing over a day (equation 42).
	 * @param weather the day
	 * @param ground the place
	 * @return the amount
	 * @throws IllegalArgumentException when a value is out of its bounds
	 */
	public static ReferenceEt penmanMonteith(WeatherDay weather, Ground ground) {
		double pressure = Vapour.pressure(ground.metres);
		double vapour = vapour(weather, pressure);
		double net = netRadiation(weather, ground, vapour);
		double deficit = Vapour.deficit(Vapour.meanSaturation(weather.minimum(), weather.maximum()), vapour);
		double amount = PenmanMonteith.ofDay(weather.mean(), net,
				new PenmanMonteith.Air(Vapour.psychrometricConstant(pressure), wind(weather), deficit));
		return new ReferenceEt(Math.max(0, amount), Method.PENMAN_MONTEITH, Substitute.of(weather));
	}

	private static double vapour(WeatherDay weather, double pressure) {
		Humidity humidity = weather.humidity();
		if (humidity == null) {
			return Vapour.fromDewPoint(weather.minimum());
		}
		return humidity.vapour(weather.minimum(), weather.maximum(), pressure);
	}

	private static double netRadiation(WeatherDay weather, Ground ground, double vapour) {
		double above = SunGeometry.extraterrestrial(ground.latitude, weather.day());
		double clear = Radiation.clearSky(above, ground.metres);
		Sunlight sunlight = weather.sunlight();
		double radiation;
		if (sunlight == null) {
			radiation = Radiation.fromTemperatures(weather.minimum(), weather.maximum(), above, clear, ground.setting);
		}
		else {
			radiation = sunlight.radiation(SunGeometry.dayLength(ground.latitude, weather.day()), above);
		}
		return Radiation.netShortwave(radiation)
				- Radiation.netLongwave(weather.minimum(), weather.maximum(), vapour, radiation, clear);
	}

	private static double wind(WeatherDay weather) {
		Wind wind = weather.wind();
		if (wind == null) {
			return Wind.UNKNOWN;
		}
		return Math.max(Wind.CALMEST, wind.atTwoMetres());
	}

	/**
	 * Computes a day by Hargreaves-Samani, whatever else is known.
	 * @param weather the day
	 * @param ground the place
	 * @return the amount
	 * @throws IllegalArgumentException when a value is out of its bounds
	 */
	public static ReferenceEt hargreavesSamani(WeatherDay weather, Ground ground) {
		double above = SunGeometry.extraterrestrial(ground.latitude, weather.day());
		return new ReferenceEt(HargreavesSamani.ofDay(weather.minimum(), weather.maximum(), above),
				Method.HARGREAVES_SAMANI, Set.of());
	}

	/** Formulas. */
	public enum Method {

		/** Equation 6 of FAO-56. */
		PENMAN_MONTEITH("Penman-Monteith", "FAO Irrigation and Drainage Paper 56, equation 6"),

		/** Equation 52 of FAO-56. */
		HARGREAVES_SAMANI("Hargreaves-Samani", "FAO Irrigation and Drainage Paper 56, equation 52");

		private final String words;

		private final String source;

		Method(String words, String source) {
			this.words = words;
			this.source = source;
		}

		public String words() {
			return this.words;
		}

		public String source() {
			return this.source;
		}

	}

	/**
	 * A place.
	 *
	 * @param latitude degrees north, -90 to 90
	 * @param metres above sea level, -430 to 8850
	 * @param setting whether the sea tempers it
	 */
	public record Ground(double latitude, double metres, Setting setting) {
	}

}
