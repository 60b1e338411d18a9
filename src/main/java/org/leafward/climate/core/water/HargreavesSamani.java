package org.leafward.climate.core.water;

/**
 * Evapotranspiration of the reference grass from temperatures alone: equation 52 of FAO
 * Irrigation and Drainage Paper 56, after Hargreaves and Samani (1985).
 */
public final class HargreavesSamani {

	private HargreavesSamani() {
	}

	/**
	 * A day, or the mean day of a month.
	 * @param minimum °C
	 * @param maximum °C; below the minimum it counts as the minimum
	 * @param extraterrestrial radiation above the atmosphere, MJ/m² per day
	 * @return mm per day, not below 0
	 * @throws IllegalArgumentException when a temperature is outside -160 to 125 °C
	 */
	public static double ofDay(double minimum, double maximum, double extraterrestrial) {
		double range = Math.max(0, Bounds.celsius(maximum) - Bounds.celsius(minimum));
		double mean = (minimum + maximum) / 2;
		return Math.max(0,
				0.0023 * (mean + 17.8) * Math.sqrt(range) * extraterrestrial * Radiation.MILLIMETRES_PER_MEGAJOULE);
	}

}
