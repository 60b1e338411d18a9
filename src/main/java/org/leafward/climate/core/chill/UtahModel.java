package org.leafward.climate.core.chill;

/**
 * Chill units of the Utah model: Richardson, Seeley and Walker (1974), HortScience
 * 9:331-332, with the bands in °F as the University of California prints them; bands
 * printed in °C elsewhere differ a little. The upper bound of a band belongs to it.
 */
public final class UtahModel {

	private static final double[] UP_TO = { 34, 36, 48, 54, 60, 65 };

	private static final double[] UNITS = { 0, 0.5, 1, 0.5, 0, -0.5, -1 };

	/** Takes the noise of the conversion from °C off, °F. */
	private static final double TINY = 1e-9;

	private UtahModel() {
	}

	/**
	 * The chill units of one hour.
	 * @param celsius its temperature, °C
	 * @return -1 to 1
	 * @throws IllegalArgumentException when the temperature is NaN
	 */
	public static double units(double celsius) {
		if (Double.isNaN(celsius)) {
			throw new IllegalArgumentException("no temperature");
		}
		double fahrenheit = celsius * 1.8 + 32 - TINY;
		int band = 0;
		while (band < UP_TO.length && fahrenheit > UP_TO[band]) {
			band++;
		}
		return UNITS[band];
	}

}
