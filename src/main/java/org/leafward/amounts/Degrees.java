package org.leafward.amounts;

import org.leafward.measure.NumberWords;

/** Temperatures in the two units that readers know. */
public final class Degrees {

	/** Degrees Fahrenheit in a degree Celsius. */
	private static final double PER_CELSIUS = 1.8;

	private Degrees() {
	}

	/**
	 * A temperature.
	 * @param fahrenheit °F
	 * @return °C
	 */
	public static double ofFahrenheit(double fahrenheit) {
		return (fahrenheit - 32) / PER_CELSIUS;
	}

	/**
	 * A difference of temperatures.
	 * @param fahrenheit degrees Fahrenheit
	 * @return degrees Celsius
	 */
	public static double differenceOfFahrenheit(double fahrenheit) {
		return fahrenheit / PER_CELSIUS;
	}

	/**
	 * A temperature for readers.
	 * @param celsius °C
	 * @return for example "−1 °C (30 °F)", rounded to whole degrees
	 */
	public static String words(double celsius) {
		return whole(celsius) + " °C (" + whole(celsius * PER_CELSIUS + 32) + " °F)";
	}

	/**
	 * A difference for readers.
	 * @param celsius degrees Celsius
	 * @return for example "2.2 °C (4 °F)"
	 */
	public static String difference(double celsius) {
		return minus(NumberWords.fixed(celsius, 1)) + " °C (" + whole(celsius * PER_CELSIUS) + " °F)";
	}

	private static String whole(double value) {
		long rounded = Math.round(value);
		return (rounded < 0) ? "−" + -rounded : String.valueOf(rounded);
	}

	private static String minus(String number) {
		return number.replace('-', '−');
	}

}
