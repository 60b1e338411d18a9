package org.leafward.climate.core.water;

/** Refuses numbers that no formula here was made for. */
public final class Bounds {

	private Bounds() {
	}

	/**
	 * Checks a number.
	 * @param what what it is, with its unit
	 * @param value the number
	 * @param low lowest that is allowed
	 * @param high highest that is allowed
	 * @return the number
	 * @throws IllegalArgumentException when it is outside the bounds or not a number
	 */
	public static double check(String what, double value, double low, double high) {
		if (!(value >= low && value <= high)) {
			throw new IllegalArgumentException("%s %s is outside %s to %s".formatted(what, value, low, high));
		}
		return value;
	}

	/**
	 * Checks a day of the year.
	 * @param day 1 for 1 January
	 * @return the day
	 * @throws IllegalArgumentException when it is outside 1 to 366
	 */
	public static int day(int day) {
		check("day of the year", day, 1, 366);
		return day;
	}

	/** As far as a measured temperature can be moved by the height of a place. */
	static double celsius(double value) {
		return check("temperature in °C", value, -160, 125);
	}

	static double percent(double value) {
		return check("relative humidity in %", value, 0, 100);
	}

}
