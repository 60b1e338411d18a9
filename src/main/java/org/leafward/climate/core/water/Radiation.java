package org.leafward.climate.core.water;

/**
 * Radiation at the ground. Source: FAO Irrigation and Drainage Paper 56, chapter 3, by
 * equation number. All amounts in MJ/m² per day unless stated.
 */
public final class Radiation {

	/** Evaporation that 1 MJ/m² is worth, mm (equation 20). */
	public static final double MILLIMETRES_PER_MEGAJOULE = 0.408;

	/** Part of the light that the reference grass throws back. */
	static final double ALBEDO = 0.23;

	/** MJ/m² per day and K⁴. */
	private static final double STEFAN_BOLTZMANN = 4.903e-9;

	private static final double KELVIN = 273.16;

	/**
	 * Rs/Rso where there is no light to tell the clouds by, in the polar night; our
	 * choice within the 0.4 to 0.8 that FAO-56 gives for nights.
	 */
	private static final double CLOUDS_IN_THE_DARK = 0.6;

	private Radiation() {
	}

	/**
	 * Radiation from the hours of sunshine, equation 35 with 0.25 and 0.50.
	 * @param sunshine hours, 0 to {@code dayLength}; a little more is taken as all
	 * @param dayLength hours
	 * @param extraterrestrial above the atmosphere
	 * @return at the ground
	 * @throws IllegalArgumentException when there is sunshine outside 0 to 24 h
	 */
	public static double fromSunshine(double sunshine, double dayLength, double extraterrestrial) {
		Bounds.check("sunshine in h", sunshine, 0, 24);
		double part = (dayLength > 0) ? Math.min(1, sunshine / dayLength) : 0;
		return (0.25 + 0.50 * part) * extraterrestrial;
	}

	/**
	 * Radiation from the temperatures, equation 50 (Hargreaves), not more than under a
	 * clear sky.
	 * @param minimum °C
	 * @param maximum °C
	 * @param extraterrestrial above the atmosphere
	 * @param clearSky the most there can be
	 * @param setting interior or coastal
	 * @return at the ground
	 */
	public static double fromTemperatures(double minimum, double maximum, double extraterrestrial, double clearSky,
			Setting setting) {
		double range = Math.max(0, Bounds.celsius(maximum) - Bounds.celsius(minimum));
		return Math.min(clearSky, setting.coefficient() * Math.sqrt(range) * extraterrestrial);
	}

	/**
	 * Radiation on an island from above, equation 51, for months and low land only.
	 * @param extraterrestrial above the atmosphere
	 * @return at the ground, not below 0
	 */
	public static double onIsland(double extraterrestrial) {
		return Math.max(0, 0.7 * extraterrestrial - 4);
	}

	/**
	 * Radiation under a clear sky, equation 37.
	 * @param extraterrestrial above the atmosphere
	 * @param metres height above sea level
	 * @return at the ground
	 */
	public static double clearSky(double extraterrestrial, double metres) {
		return (0.75 + 2e-5 * Bounds.check("height in m", metres, -430, 8850)) * extraterrestrial;
	}

	/**
	 * Light that stays, equation 38.
	 * @param radiation at the ground
	 * @return net
	 */
	public static double netShortwave(double radiation) {
		return (1 - ALBEDO) * radiation;
	}

	/**
	 * Heat of a black body in a day, as in table 2.8.
	 * @param celsius temperature
	 * @return MJ/m² per day
	 */
	public static double blackBody(double celsius) {
		double kelvin = Bounds.celsius(celsius) + KELVIN;
		return STEFAN_BOLTZMANN * kelvin * kelvin * kelvin * kelvin;
	}

	/**
	 * Heat that the ground loses to the sky in a day, equation 39.
	 * @param minimum °C
	 * @param maximum °C
	 * @param vapour pressure of the vapour, kPa
	 * @param radiation at the ground
	 * @param clearSky under a clear sky
	 * @return net, positive when lost
	 */
	public static double netLongwave(double minimum, double maximum, double vapour, double radiation, double clearSky) {
		double black = (blackBody(minimum) + blackBody(maximum)) / 2;
		return black * emissivity(vapour) * clouds((clearSky > 0) ? radiation / clearSky : CLOUDS_IN_THE_DARK);
	}

	/**
	 * Heat that the ground loses in an hour, equation 39 with σ/24.
	 * @param celsius mean of the hour
	 * @param vapour pressure of the vapour, kPa
	 * @param clearness Rs/Rso of the hour, at night that of the last hours of light, 0 to
	 * 1
	 * @return MJ/m² per hour
	 */
	public static double netLongwaveOfHour(double celsius, double vapour, double clearness) {
		return blackBody(celsius) / 24 * emissivity(vapour) * clouds(clearness);
	}

	private static double emissivity(double vapour) {
		return 0.34 - 0.14 * Math.sqrt(vapour);
	}

	private static double clouds(double clearness) {
		return 1.35 * Math.max(0, Math.min(1, clearness)) - 0.35;
	}

	/**
	 * Heat that goes into the ground in a month, equation 43.
	 * @param before mean temperature of the month before, °C
	 * @param after mean temperature of the month after, °C
	 * @return MJ/m² per day
	 */
	public static double groundHeatOfMonth(double before, double after) {
		return 0.07 * (after - before);
	}

	/**
	 * The same when the next month isn't known yet, equation 44.
	 * @param before mean temperature of the month before, °C
	 * @param now mean temperature of the month, °C
	 * @return MJ/m² per day
	 */
	public static double groundHeatOfMonthSoFar(double before, double now) {
		return 0.14 * (now - before);
	}

	/**
	 * Heat that goes into the ground in an hour, equations 45 and 46.
	 * @param net radiation, MJ/m² per hour
	 * @param daylight whether the sun is up
	 * @return MJ/m² per hour
	 */
	public static double groundHeatOfHour(double net, boolean daylight) {
		return (daylight ? 0.1 : 0.5) * net;
	}

}
