package org.leafward.climate.core.water;

/**
 * Evapotranspiration of the reference grass, FAO Irrigation and Drainage Paper 56. All
 * results may be slightly negative on cold nights (dew); daily values are cut at 0 by
 * {@link ReferenceEt}.
 */
public final class PenmanMonteith {

	private PenmanMonteith() {
	}

	/**
	 * A day, or the mean day of a month; equation 6.
	 * @param celsius mean temperature
	 * @param available net radiation less heat into the ground, MJ/m² per day
	 * @param air vapour and wind
	 * @return mm per day
	 */
	public static double ofDay(double celsius, double available, Air air) {
		return of(celsius, available, air, 900);
	}

	/**
	 * An hour; equation 53.
	 * @param celsius mean temperature
	 * @param available net radiation less heat into the ground, MJ/m² per hour
	 * @param air vapour and wind
	 * @return mm per hour
	 */
	public static double ofHour(double celsius, double available, Air air) {
		return of(celsius, available, air, 37);
	}

	private static double of(double celsius, double available, Air air, double numerator) {
		double slope = Vapour.slope(celsius);
		double heat = Radiation.MILLIMETRES_PER_MEGAJOULE * slope * available;
		double wind = air.psychrometric * numerator / (celsius + 273) * air.wind * air.deficit;
		return (heat + wind) / (slope + air.psychrometric * (1 + 0.34 * air.wind));
	}

	/**
	 * The air over the grass.
	 *
	 * @param psychrometric constant, kPa/°C
	 * @param wind at 2 m, m/s
	 * @param deficit of vapour pressure, kPa
	 */
	public record Air(double psychrometric, double wind, double deficit) {
	}

}
