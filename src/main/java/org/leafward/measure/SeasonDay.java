package org.leafward.measure;

import java.time.LocalDate;

/**
 * Day numbers on a 365-day calendar, so that dates of different years can be averaged and
 * ranked. 1 January of the season's year is day 1; 29 February counts as 28 February;
 * earlier years give zero and below, later years 366 and above.
 */
public final class SeasonDay {

	private static final int DAYS = 365;

	/** Any year without 29 February. */
	private static final int PLAIN_YEAR = 2001;

	private SeasonDay() {
	}

	/**
	 * The day number of a date in a season.
	 * @param date any date
	 * @param seasonYear the season's year
	 * @return 1 for 1 January of {@code seasonYear}, 366 for 1 January of the next year
	 */
	public static int of(LocalDate date, int seasonYear) {
		int day = date.getDayOfYear();
		if (date.isLeapYear() && day >= 60) {
			day--;
		}
		return day + (date.getYear() - seasonYear) * DAYS;
	}

	/**
	 * The date of a day number.
	 * @param day day number, may be fractional; halves go to the later day
	 * @param seasonYear the season's year
	 * @return never 29 February
	 */
	public static LocalDate toDate(double day, int seasonYear) {
		int whole = (int) Math.floor(day + 0.5);
		int year = Math.floorDiv(whole - 1, DAYS);
		int dayOfYear = Math.floorMod(whole - 1, DAYS) + 1;
		return LocalDate.ofYearDay(PLAIN_YEAR, dayOfYear).withYear(seasonYear + year);
	}

}
