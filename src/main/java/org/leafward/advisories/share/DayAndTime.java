package org.leafward.advisories.share;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
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

	/** Whole days, as their beginning and end are midnights. */
	private static boolean days(ZonedDateTime from, ZonedDateTime to) {
		return from.toLocalTime().equals(LocalTime.MIDNIGHT) && to.toLocalTime().equals(LocalTime.MIDNIGHT);
	}

	/**
	 * From when to when, as the pages write it; of one that was called off, when that
	 * was.
	 * @param advisory the advisory
	 * @return for example "From Tue 20 Apr 2027, 02:00 to Tue 20 Apr 2027, 09:00."
	 */
	public static String sentence(Advisory advisory) {
		if (advisory.state() == AdvisoryState.CANCELLED) {
			return "On " + of(advisory.sent(), advisory.zone()) + ".";
		}
		ZonedDateTime from = advisory.onset().atZone(advisory.zone());
		ZonedDateTime to = advisory.expires().atZone(advisory.zone());
		if (!days(from, to)) {
			return "From " + of(advisory.onset(), advisory.zone()) + " to " + of(advisory.expires(), advisory.zone())
					+ ".";
		}
		ZonedDateTime last = to.minusDays(1);
		return from.toLocalDate().equals(last.toLocalDate()) ? "On " + DAY_YEAR.format(from) + "."
				: "From " + DAY_YEAR.format(from) + " to " + DAY_YEAR.format(last) + ".";
	}

	/**
	 * From when to when.
	 * @param advisory the advisory
	 * @param language in which language
	 * @return for example "Tue 20 Apr, 02:00 to 09:00", or days alone
	 */
	public static String span(Advisory advisory, Language language) {
		ZonedDateTime from = advisory.onset().atZone(advisory.zone());
		ZonedDateTime to = advisory.expires().atZone(advisory.zone());
		boolean spanish = language == Language.SPANISH;
		if (days(from, to)) {
			ZonedDateTime last = to.minusDays(1);
			DateTimeFormatter day = spanish ? SPANISH : DAY;
			return from.toLocalDate().equals(last.toLocalDate()) ? day.format(from)
					: day.format(from) + (spanish ? " al " : " to ") + day.format(last);
		}
		boolean sameDay = from.toLocalDate().equals(to.toLocalDate());
		if (spanish) {
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
