package org.leafward.advisories.share;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.leafward.advisories.Advisory;
import org.leafward.language.Language;

/** Days and times of advisories in words. */
public final class DayAndTime {

	private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

	private static final DateTimeFormatter DAY_YEAR = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

	private static final DateTimeFormatter SPANISH = DateTimeFormatter.ofPattern("EEEE d 'de' MMMM",
			Language.SPANISH.locale());

	private static final DateTimeFormatter BRIEF = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

	private static final DateTimeFormatter BRIEF_SPANISH = DateTimeFormatter.ofPattern("d 'de' MMM",
			Language.SPANISH.locale());

	private DayAndTime() {
	}

	/**
	 * A time, as the pages write it.
	 * @param time the time
	 * @param zone whose clock
	 * @return for example "Tue 20 Apr 2027, 02:00"
	 */
	public static String of(Instant time, ZoneId zone) {
		ZonedDateTime there = time.atZone(zone);
		return DAY_YEAR.format(there) + ", " + CLOCK.format(there);
	}

	/**
	 * From when to when.
	 * @param advisory the advisory
	 * @param language in which language
	 * @return for example "Tue 20 Apr, 02:00 to 09:00"
	 */
	public static String span(Advisory advisory, Language language) {
		ZonedDateTime from = advisory.onset().atZone(advisory.zone());
		ZonedDateTime to = advisory.expires().atZone(advisory.zone());
		boolean sameDay = from.toLocalDate().equals(to.toLocalDate());
		if (language == Language.SPANISH) {
			return SPANISH.format(from) + ", de " + CLOCK.format(from) + " a "
					+ (sameDay ? "" : SPANISH.format(to) + ", ") + CLOCK.format(to);
		}
		return DAY.format(from) + ", " + CLOCK.format(from) + " to " + (sameDay ? "" : DAY.format(to) + ", ")
				+ CLOCK.format(to);
	}

	/**
	 * A day of the year.
	 * @param date the day
	 * @param language in which language
	 * @return for example "5 May"
	 */
	public static String day(LocalDate date, Language language) {
		return (language == Language.SPANISH) ? BRIEF_SPANISH.format(date).replace(".", "") : BRIEF.format(date);
	}

}
