package org.leafward.reminders;

import java.util.Locale;

/** Messages that belong together and that a person can leave by one link. */
public enum Series {

	/** One message a morning, about what falls on it. */
	MORNING,

	/** One message a week, about this week and the next; it holds that morning's too. */
	OUTLOOK,

	/** Warnings of a night that needs covers. */
	TONIGHT,

	/** Messages about one thing each. */
	SINGLE,

	/** Regional advisories, their changes and their end. */
	ADVISORY;

	/**
	 * Its name in the database.
	 * @return lower case
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT);
	}

	/**
	 * Reads a code.
	 * @param code what {@link #code()} gives
	 * @return the series
	 * @throws IllegalArgumentException if there is no such series
	 */
	public static Series of(String code) {
		return valueOf(code.toUpperCase(Locale.ROOT));
	}

}
