package org.leafward.climate.core.chill;

/**
 * Estimates the temperature of each hour from daily minima and maxima: by day a sine from
 * the minimum at sunrise, by night a fall with the logarithm of the time since sunset to
 * the next minimum. After Linvill (1990), "Calculating chilling hours and chill units
 * from daily maximum and minimum temperature observations", HortScience 25:14-16. The
 * paper was not at hand: the formulas are from memory, and agree with a public program
 * that names it.
 * <p>
 * With D hours of daylight, t hours after sunrise: low + (high - low) sin(πt / (D + 4));
 * t hours after sunset: S - (S - next low) ln t / ln(24 - D), where S is the temperature
 * at sunset, and is kept during the first hour.
 */
public final class HourlyTemperature {

	/** Hours of a day. */
	public static final int HOURS = 24;

	/** Daylight is kept inside these bounds, for the curve needs a day and a night. */
	private static final double SHORTEST = 2;

	private static final double LONGEST = 22;

	/** The sine would be back at the minimum so many hours after sunset. */
	private static final double LATER = 4;

	private HourlyTemperature() {
	}

	/**
	 * The temperature at each full hour of a day, from midnight, in solar time.
	 * @param before the day before
	 * @param day the day
	 * @param nextLow minimum of the day after, °C
	 * @param daylight hours from sunrise to sunset, 0 to 24
	 * @return 24 temperatures, °C; NaN when one that is needed is NaN
	 * @throws IllegalArgumentException when the hours of daylight are out of bounds
	 */
	public static double[] of(Day before, Day day, double nextLow, double daylight) {
		if (!(daylight >= 0 && daylight <= HOURS)) {
			throw new IllegalArgumentException("%s hours of daylight are outside 0 to 24".formatted(daylight));
		}
		double light = Math.min(LONGEST, Math.max(SHORTEST, daylight));
		double sunrise = HOURS / 2.0 - light / 2;
		double sunset = HOURS / 2.0 + light / 2;
		double[] hours = new double[HOURS];
		for (int hour = 0; hour < HOURS; hour++) {
			if (hour < sunrise) {
				hours[hour] = night(byDay(before, light, light), day.low(), hour + HOURS - sunset, light);
			}
			else if (hour <= sunset) {
				hours[hour] = byDay(day, hour - sunrise, light);
			}
			else {
				hours[hour] = night(byDay(day, light, light), nextLow, hour - sunset, light);
			}
		}
		return hours;
	}

	private static double byDay(Day day, double sinceSunrise, double light) {
		return day.low() + (day.high() - day.low()) * Math.sin(Math.PI * sinceSunrise / (light + LATER));
	}

	private static double night(double sunset, double low, double sinceSunset, double light) {
		return sunset - (sunset - low) * Math.log(Math.max(1, sinceSunset)) / Math.log(HOURS - light);
	}

	/**
	 * Minimum and maximum of a day.
	 *
	 * @param low °C
	 * @param high °C
	 */
	public record Day(double low, double high) {
	}

}
