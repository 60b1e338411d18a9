package org.leafward.climate;

/**
 * How the temperatures of a place differ from a station's: all of them by the difference
 * in height, minima also by what the place's lie does to its nights. The mean of a day's
 * minimum and maximum takes half of the latter.
 *
 * @param colderForHeight how much colder the place is for its height, °C
 * @param warmerNights how much warmer its minima are than on open, level ground, °C
 */
public record TemperatureShift(double colderForHeight, double warmerNights) {

	/**
	 * Open, level ground.
	 * @param colder how much colder the place is for its height, °C
	 * @return no difference between night and day
	 */
	public static TemperatureShift height(double colder) {
		return new TemperatureShift(colder, 0);
	}

	/**
	 * How much colder minima are.
	 * @return °C, negative when warmer
	 */
	public double low() {
		return this.colderForHeight - this.warmerNights;
	}

	/**
	 * How much colder maxima are.
	 * @return °C, negative when warmer
	 */
	public double high() {
		return this.colderForHeight;
	}

	/**
	 * How much colder the mean of minimum and maximum is.
	 * @return °C, negative when warmer
	 */
	public double mean() {
		return (low() + high()) / 2;
	}

}
