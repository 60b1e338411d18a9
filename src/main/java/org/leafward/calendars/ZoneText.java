package org.leafward.calendars;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneOffsetTransitionRule;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.Locale;

/**
 * A time zone as a VTIMEZONE (RFC 5545, section 3.6.5): its rules of today, said as
 * holding since 1970. One widely used client needs it with each TZID, and misreads forms
 * that list the years. It is right for what is to come, which is all that workdays ask.
 */
public final class ZoneText {

	private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);

	private static final int SINCE = 1970;

	private static final int WEEK = 7;

	private ZoneText() {
	}

	/**
	 * The lines of a zone.
	 * @param zone a region of the IANA database
	 * @return lines that end with CRLF, none longer than 75 octets
	 */
	public static String of(ZoneId zone) {
		ZoneRules rules = zone.getRules();
		StringBuilder lines = new StringBuilder("BEGIN:VTIMEZONE\r\nTZID:").append(zone.getId()).append("\r\n");
		List<ZoneOffsetTransitionRule> changes = rules.getTransitionRules();
		if (changes.isEmpty()) {
			List<ZoneOffsetTransition> all = rules.getTransitions();
			ZoneOffset always = all.isEmpty() ? rules.getOffset(LocalDateTime.of(SINCE, Month.JANUARY, 1, 0, 0))
					: all.get(all.size() - 1).getOffsetAfter();
			part(lines, "STANDARD", LocalDateTime.of(SINCE, Month.JANUARY, 1, 0, 0), always, always, "");
		}
		for (ZoneOffsetTransitionRule change : changes) {
			boolean summer = change.getOffsetAfter().getTotalSeconds() > change.getStandardOffset().getTotalSeconds();
			part(lines, summer ? "DAYLIGHT" : "STANDARD", change.createTransition(SINCE).getDateTimeBefore(),
					change.getOffsetBefore(), change.getOffsetAfter(),
					"RRULE:FREQ=YEARLY;BYMONTH=%d%s\r\n".formatted(change.getMonth().getValue(), day(change)));
		}
		return lines.append("END:VTIMEZONE\r\n").toString();
	}

	/**
	 * A time with its zone (RFC 5545, form 3 of section 3.3.5). The library isn't asked:
	 * ical4j 4.3 reckons with zones of its own, by which the week before the clocks
	 * change in spring was an hour late in North America (7 to 13 March 2027 and most
	 * years).
	 * @param name such as DTSTART
	 * @param time when, in a region of the IANA database; where clocks are set back, the
	 * first of both hours is read
	 * @return a line that ends with CRLF
	 */
	public static String at(String name, ZonedDateTime time) {
		return "%s;TZID=%s:%s\r\n".formatted(name, time.getZone().getId(), LOCAL.format(time));
	}

	private static void part(StringBuilder lines, String name, LocalDateTime from, ZoneOffset before, ZoneOffset after,
			String rule) {
		lines.append("BEGIN:%s\r\nDTSTART:%s\r\n%sTZOFFSETFROM:%s\r\nTZOFFSETTO:%s\r\nEND:%s\r\n".formatted(name,
				LOCAL.format(from), rule, offset(before), offset(after), name));
	}

	/** On which day of its month, such as the second Sunday or the last. */
	private static String day(ZoneOffsetTransitionRule change) {
		DayOfWeek weekday = change.getDayOfWeek();
		int first = change.getDayOfMonthIndicator();
		if (weekday == null) {
			return ";BYMONTHDAY=" + first;
		}
		String name = weekday.name().substring(0, 2);
		int last = (change.getMonth() == Month.FEBRUARY) ? 28 : change.getMonth().maxLength();
		if (first == -1 || first == last - WEEK + 1) {
			return ";BYDAY=-1" + name;
		}
		if (first > 0 && first % WEEK == 1) {
			return ";BYDAY=%d%s".formatted(first / WEEK + 1, name);
		}
		StringBuilder days = new StringBuilder(";BYDAY=").append(name).append(";BYMONTHDAY=");
		int from = (first > 0) ? first : last + first - WEEK + 2;
		for (int i = 0; i < WEEK; i++) {
			days.append((i > 0) ? "," : "").append(from + i);
		}
		return days.toString();
	}

	private static String offset(ZoneOffset offset) {
		int seconds = offset.getTotalSeconds();
		int size = Math.abs(seconds);
		return "%s%02d%02d%s".formatted((seconds < 0) ? "-" : "+", size / 3600, size / 60 % 60,
				(size % 60 == 0) ? "" : "%02d".formatted(size % 60));
	}

}
