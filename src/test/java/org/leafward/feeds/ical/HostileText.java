package org.leafward.feeds.ical;

import java.util.Random;

/** Seeded text of all that is known to break a calendar. */
final class HostileText {

	private static final String[] PIECES = { "\u0000", "\u0007", "\u001B", "\t", "\u000B", "\u000C", "\r", "\n", "\r\n",
			"\u007F", "\u0085", "\u009B", "\u2028", "\u2029", "\uFEFF", "\uD83C", "\uDF31", "\uD83C\uDF31",
			"\uD83D\uDC68\u200D\uD83C\uDF3E", "e\u0301", "\u05D2\u05D9\u05DF", "\u062D\u062F\u064A\u0642\u0629",
			"\u202Eevil\u202C", ",", ";", "\\", "\\n", "\\,", "\\;", "\"", ":", "^n", "^'", "ü", "…", "=0D", "%0A",
			"END:VEVENT", "\r\nEND:VCALENDAR\r\n", "BEGIN:VALARM", "\r\n ", "\n\t", "\\N", "\\\\n", "\\", ";;", ",,",
			"\u00A0", "\u200B", "\u200F", "\u2066inside\u2069", "\u0301", "\u1112\u1161\u11AB", "\uFFFD", "\uFDD0",
			"\uFFFF", "\uDBFF\uDFFF", "\uDC00\uD800", "\uD83C\uDDF3\uD83C\uDDFF",
			"\uD83D\uDC69\uD83C\uDFFD\u200D\uD83D\uDD2C", "\u0E01\u0E49\u0E49", "\u1E9B\u0323", "\u0130", "\u2126",
			"\u3000", "\u180E", "UID:x", "DTSTART;VALUE=DATE:20260101", "(common boxwood)", "${x}", "%s", "{0}", "'",
			"-", "20 mm (0.8 in)", " ", "prune", "the hedge", "0", "<b>", "&amp;" };

	private HostileText() {
	}

	/**
	 * Some text.
	 * @param random seeded
	 * @param least characters at least
	 * @return hostile text
	 */
	static String some(Random random, int least) {
		StringBuilder text = new StringBuilder();
		while (text.length() < least) {
			text.append(PIECES[random.nextInt(PIECES.length)]);
		}
		return text.toString();
	}

}
