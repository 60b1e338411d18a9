package org.leafward.measure;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Locale;

/** Dates written out for readers, in English. */
public final class DayWords {

	private static final String[] WEEKDAYS = Arrays.stream(DayOfWeek.values())
		.map((day) -> day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " ")
		.toArray(String[]::new);

	private static final String[] MONTHS = Arrays.stream(Month.values())
		.map((month) -> " " + month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH) + " ")
		.toArray(String[]::new);

	private DayWords() {
	}

	/**
	 * A date with its weekday and year.
	 * @param day the date, of the years 1000 to 9999
	 * @return for example "Thu 12 Nov 2026"
	 */
	public static String of(LocalDate day) {
		// A hundred of these stand in the explanations of one page; a formatter takes
		// several times as long.
		return WEEKDAYS[day.getDayOfWeek().ordinal()] + day.getDayOfMonth() + MONTHS[day.getMonthValue() - 1]
				+ day.getYear();
	}

	/**
	 * A window with both ends.
	 * @param window the window
	 * @return for example "Thu 12 Nov 2026 to Sat 5 Dec 2026", or one date
	 */
	public static String of(DayWindow window) {
		return (window.days() == 1) ? of(window.from()) : of(window.from()) + " to " + of(window.to());
	}

}
