package org.leafward.climate.core;

import org.leafward.climate.StationId;
import org.leafward.climate.TemperatureThreshold;

/**
 * Puts a threshold and a height into one whole number of the record, so that sites at
 * like heights share their samples: "at most 3.2 tenths" is "at most 3".
 */
final class Limits {

	/** Takes the noise of binary fractions off a limit that is a whole number. */
	private static final double TINY = 1e-6;

	private Limits() {
	}

	/**
	 * The highest daily minimum that counts as a freeze.
	 * <p>
	 * Minima in the United States are whole °F, kept in tenths of °C. Mostly 28 °F is
	 * -2.2 °C, but since late 2013 values like -2.1 °C stand there too (388 in the record
	 * of New York Central Park). So where a Fahrenheit threshold meets such a station,
	 * the value is taken back to whole °F first; otherwise tenths of °C are compared.
	 * @param threshold at the site
	 * @param colderBy how much colder the site is than the station, °C
	 * @param station the station
	 * @return tenths of °C
	 */
	static int minimum(TemperatureThreshold threshold, double colderBy, StationId station) {
		if (threshold.fahrenheit() && station.value().startsWith("US")) {
			double whole = Math.floor(threshold.degrees() + colderBy * 1.8 + TINY);
			return (int) Math.ceil((whole + 0.5 - 32) / 0.18 - TINY) - 1;
		}
		return (int) Math.floor(threshold.tenthsCelsius() + colderBy * 10 + TINY);
	}

	/**
	 * The lowest sum of five minima that counts as warm nights.
	 * @param threshold at the site
	 * @param colderBy how much colder the site is than the station, °C
	 * @return tenths of °C
	 */
	static int warmNights(TemperatureThreshold threshold, double colderBy) {
		return (int) Math.ceil((threshold.tenthsCelsius() + colderBy * 10) * NightSearch.NIGHTS - TINY);
	}

	/**
	 * The highest sum of five minima that counts as cool nights, or of five maxima that
	 * counts as cool days.
	 * @param threshold at the site
	 * @param colderBy how much colder the site is than the station, °C
	 * @return tenths of °C
	 */
	static int coolNights(TemperatureThreshold threshold, double colderBy) {
		return (int) Math.floor((threshold.tenthsCelsius() + colderBy * 10) * NightSearch.NIGHTS + TINY);
	}

	/**
	 * The temperature of the station's soil that goes with a threshold at the site, in
	 * steps of a hundredth of a degree.
	 * @param threshold at the site
	 * @param colderBy how much colder the site is than the station, °C
	 * @return hundredths of °C
	 */
	static int soil(TemperatureThreshold threshold, double colderBy) {
		return (int) Math.round((threshold.celsius() + colderBy) * 100);
	}

	/**
	 * How much colder a site's ground is, in steps of a hundredth of a degree.
	 * @param colderBy how much colder the site is than the station, °C
	 * @return hundredths of °C
	 */
	static int ground(double colderBy) {
		return (int) Math.round(colderBy * 100);
	}

}
