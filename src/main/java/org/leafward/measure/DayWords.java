package org.leafward.measure;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates written out for readers, in English. */
public final class DayWords {

	private static final DateTimeFormatter FULL = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

	private DayWords() {
	}

	/**
	 * A date with its weekday and year.
	 * @param day the date
	 * @return for example "Thu 12 Nov 2026"
	 */
	public static String of(LocalDate day) {
		return FULL.format(day);
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
