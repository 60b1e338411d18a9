package org.leafward.feeds.ical;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.core.Revision;

/**
 * What a document of ours showed: each entry's looks and its revision. A document is read
 * back by its octets alone, which works as long as it was written here.
 */
final class Shown {

	private static final byte[] BEGIN = ascii("BEGIN:V");

	private static final byte[] END = ascii("END:");

	private static final byte[] UID = ascii("UID:");

	private static final byte[] STAMP = ascii("DTSTAMP:");

	private static final byte[] CHANGED = ascii("LAST-MODIFIED:");

	private static final byte[] SEQUENCE = ascii("SEQUENCE:");

	/** As in 20260101T000000Z. */
	private static final int MOMENT = 16;

	/** The largest number of so many digits is an int. */
	private static final int DIGITS = 9;

	/**
	 * An entry: its looks are its octets without those of its revision.
	 *
	 * @param document what it stands in
	 * @param from where it begins
	 * @param stamp where its revision begins
	 * @param behind where the rest begins
	 * @param to where it ends
	 * @param revision its revision
	 */
	record Entry(byte[] document, int from, int stamp, int behind, int to, Revision revision) {

		boolean looksLike(byte[] looks) {
			int first = this.stamp - this.from;
			return looks.length == first + this.to - this.behind
					&& Arrays.equals(looks, 0, first, this.document, this.from, this.stamp)
					&& Arrays.equals(looks, first, looks.length, this.document, this.behind, this.to);
		}

		/** All of it. */
		Block block() {
			return new Block(this.document, this.from, this.to);
		}

	}

	/**
	 * A part of a document.
	 *
	 * @param octets of the document
	 * @param from where it begins
	 * @param to where it ends
	 */
	record Block(byte[] octets, int from, int to) {

		int length() {
			return this.to - this.from;
		}

	}

	private Shown() {
	}

	/**
	 * Reads a document.
	 * @param octets of a document of ours; empty for none
	 * @return by identifier; what can't be read is left out
	 */
	static Map<String, Entry> of(byte[] octets) {
		Map<String, Entry> entries = new HashMap<>();
		int at = next(octets, 0);
		while (at < octets.length && !starts(octets, at, BEGIN)) {
			at = next(octets, at);
		}
		while (at < octets.length && starts(octets, at, BEGIN)) {
			at = read(octets, at, entries);
		}
		return entries;
	}

	/** Reads one component; an alarm inside has an end of its own. */
	private static int read(byte[] octets, int from, Map<String, Entry> entries) {
		int name = from + BEGIN.length - 1;
		int at = next(octets, from);
		byte[] end = Arrays.copyOfRange(octets, name, at);
		String uid = null;
		Revision revision = null;
		int stamp = -1;
		int behind = -1;
		while (at < octets.length) {
			int next = next(octets, at);
			if (octets[at] == 'U' && starts(octets, at, UID)) {
				uid = text(octets, at + UID.length, next);
			}
			else if (octets[at] == 'D' && starts(octets, at, STAMP)) {
				stamp = at;
				int sequence = next(octets, next);
				behind = next(octets, sequence);
				revision = revision(octets, next, sequence, behind);
				next = (revision != null) ? behind : next;
			}
			else if (octets[at] == 'E' && starts(octets, at, END) && starts(octets, at + END.length, end)) {
				if (uid != null && revision != null) {
					entries.put(uid, new Entry(octets, from, stamp, behind, next, revision));
				}
				return next;
			}
			at = next;
		}
		return at;
	}

	private static @Nullable Revision revision(byte[] octets, int changed, int sequence, int behind) {
		if (!starts(octets, changed, CHANGED) || !starts(octets, sequence, SEQUENCE)) {
			return null;
		}
		String moment = text(octets, changed + CHANGED.length, sequence);
		String number = text(octets, sequence + SEQUENCE.length, behind);
		if (moment.length() != MOMENT || number.length() > DIGITS) {
			return null;
		}
		try {
			Instant at = LocalDateTime
				.of(number(moment, 0, 4), number(moment, 4, 6), number(moment, 6, 8), number(moment, 9, 11),
						number(moment, 11, 13), number(moment, 13, 15))
				.toInstant(ZoneOffset.UTC);
			return new Revision(number(number, 0, number.length()), at);
		}
		catch (DateTimeException | NumberFormatException ex) {
			return null;
		}
	}

	private static int number(String text, int from, int to) {
		return Integer.parseUnsignedInt(text, from, to, 10);
	}

	private static String text(byte[] octets, int from, int to) {
		return new String(octets, from, Math.max(0, to - from - 2), StandardCharsets.UTF_8);
	}

	/** Where the next line begins. */
	static int next(byte[] octets, int from) {
		int at = from;
		while (at < octets.length && octets[at] != '\n') {
			at++;
		}
		return Math.min(at + 1, octets.length);
	}

	private static boolean starts(byte[] octets, int at, byte[] with) {
		return at + with.length <= octets.length && Arrays.equals(octets, at, at + with.length, with, 0, with.length);
	}

	private static byte[] ascii(String text) {
		return text.getBytes(StandardCharsets.US_ASCII);
	}

	/** Writes the lines of a revision. */
	static void write(Lines lines, Revision revision) {
		// Without METHOD, DTSTAMP is the last revision (RFC 5545 section 3.8.7.2).
		lines.moment("DTSTAMP", revision.changed())
			.moment("LAST-MODIFIED", revision.changed())
			.plain("SEQUENCE", String.valueOf(revision.sequence()));
	}

}
