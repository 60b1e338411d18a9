package org.leafward.calendars;

import java.nio.charset.StandardCharsets;
import java.text.BreakIterator;
import java.text.Normalizer;
import java.util.Locale;

/**
 * Makes text safe for every calendar client. Some split lines at U+0085, U+2028 or
 * U+2029, some drop a whole value that holds one, and a control character is not allowed
 * in TEXT at all (RFC 5545 section 3.1, CONTROL).
 */
public final class PlainText {

	private static final String ELLIPSIS = "…";

	private PlainText() {
	}

	/**
	 * Text with line breaks as LF, in Unicode normalisation form C (UAX #15), without
	 * control characters, byte order marks and lone surrogates. Every kind of line or
	 * paragraph separator becomes LF, a tab becomes a space. Applying it twice changes
	 * nothing.
	 * @param text any text
	 * @return never null
	 */
	public static String clean(String text) {
		if (isClean(text)) {
			return text;
		}
		StringBuilder kept = new StringBuilder(text.length());
		text.replace("\r\n", "\n").codePoints().forEach((point) -> append(kept, point));
		return Normalizer.normalize(kept, Normalizer.Form.NFC);
	}

	/**
	 * Whether nothing in a text can need cleaning, which is so for nearly all: characters
	 * below U+0300 and the dashes, quotation marks and dots of U+2010 to U+2027 are in
	 * form C by themselves and next to each other.
	 */
	private static boolean isClean(String text) {
		for (int at = 0; at < text.length(); at++) {
			char unit = text.charAt(at);
			boolean plain = unit >= ' ' && unit < 0x7F || unit >= 0xA0 && unit < 0x300
					|| unit >= 0x2010 && unit <= 0x2027 || unit == '\n';
			if (!plain) {
				return false;
			}
		}
		return true;
	}

	private static void append(StringBuilder kept, int point) {
		if (separates(point)) {
			kept.append('\n');
		}
		else if (point == '\t') {
			kept.append(' ');
		}
		else if (allowed(point)) {
			kept.appendCodePoint(point);
		}
	}

	private static boolean separates(int point) {
		return point == '\n' || point == '\r' || point == 0x0B || point == 0x0C || point == 0x85 || point == 0x2028
				|| point == 0x2029;
	}

	private static boolean allowed(int point) {
		return !Character.isISOControl(point) && point != 0xFEFF && Character.getType(point) != Character.SURROGATE;
	}

	/**
	 * Clean text on one line: runs of white space become one space.
	 * @param text any text
	 * @return without line breaks, trimmed
	 */
	public static String line(String text) {
		String clean = clean(text);
		return spaced(clean) ? clean : clean.replaceAll("\\s+", " ").strip();
	}

	/** Whether words stand apart by one space each and nothing stands around them. */
	private static boolean spaced(String clean) {
		boolean space = true;
		for (int at = 0; at < clean.length(); at++) {
			char unit = clean.charAt(at);
			if (unit == '\n' || space && Character.isWhitespace(unit)) {
				return false;
			}
			space = Character.isWhitespace(unit);
		}
		return !space;
	}

	/**
	 * The number of code points.
	 * @param text any text
	 * @return 0 or more
	 */
	public static int length(String text) {
		return text.codePointCount(0, text.length());
	}

	/**
	 * Shortens text to a number of code points, never inside what readers see as one
	 * character; an ellipsis stands for the rest.
	 * @param text clean text
	 * @param most 1 or more code points, the ellipsis included
	 * @return at most {@code most} code points
	 */
	public static String cut(String text, int most) {
		return cut(text, most, false);
	}

	/**
	 * Shortens text to a number of octets in UTF-8, as {@link #cut} does.
	 * @param text clean text
	 * @param most 3 or more octets, the ellipsis included
	 * @return at most {@code most} octets
	 */
	public static String cutOctets(String text, int most) {
		return cut(text, most, true);
	}

	private static String cut(String text, int most, boolean octets) {
		if (measure(text, octets) <= most) {
			return text;
		}
		int room = most - measure(ELLIPSIS, octets);
		if (isClean(text)) {
			// Each of these is a character of its own.
			int end = 0;
			for (int used = 0; end < text.length(); end++) {
				used += octets ? octets(text.charAt(end)) : 1;
				if (used > room) {
					break;
				}
			}
			return text.substring(0, end).stripTrailing() + ELLIPSIS;
		}
		BreakIterator characters = BreakIterator.getCharacterInstance(Locale.ROOT);
		characters.setText(text);
		int end = 0;
		int used = 0;
		for (int next = characters.next(); next != BreakIterator.DONE; next = characters.next()) {
			used += measure(text.substring(end, next), octets);
			if (used > room) {
				break;
			}
			end = next;
		}
		return text.substring(0, end).stripTrailing() + ELLIPSIS;
	}

	/** In UTF-8 (RFC 3629, section 3), of what is no surrogate. */
	private static int octets(char unit) {
		return (unit < 0x80) ? 1 : (unit < 0x800) ? 2 : 3;
	}

	private static int measure(String text, boolean octets) {
		return octets ? text.getBytes(StandardCharsets.UTF_8).length : length(text);
	}

}
