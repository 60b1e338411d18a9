package org.leafward.reminders.core;

/**
 * Makes one line of text that others wrote, so that it can stand in a header or a line of
 * a mail. A header ends at CR LF (RFC 5322 section 2.2); a name that carried one could
 * add headers of its own.
 */
public final class OneLine {

	/** First strong isolate and pop directional isolate (UAX #9 section 2.4). */
	private static final char ISOLATE = '\u2068';

	private static final char POP_ISOLATE = '\u2069';

	private OneLine() {
	}

	/**
	 * Replaces runs of white space, control characters and line separators by one space,
	 * and takes out what turns the direction of the words around it, and halves of
	 * characters.
	 * @param text any text
	 * @return one line without space at its ends
	 */
	public static String of(String text) {
		return clean(text) ? text : cleaned(text);
	}

	/** Most texts are lines already. */
	private static boolean clean(String text) {
		boolean space = true;
		for (int at = 0; at < text.length(); at++) {
			char one = text.charAt(at);
			if (Character.isSurrogate(one) || turns(one) || (one != ' ' && parts(one)) || (one == ' ' && space)) {
				return false;
			}
			space = one == ' ';
		}
		return !space;
	}

	private static String cleaned(String text) {
		StringBuilder line = new StringBuilder(text.length());
		boolean space = false;
		for (int at = 0; at < text.length();) {
			int one = text.codePointAt(at);
			at += Character.charCount(one);
			if (parts(one)) {
				space = true;
			}
			else if (!turns(one) && Character.getType(one) != Character.SURROGATE) {
				if (space && !line.isEmpty()) {
					line.append(' ');
				}
				space = false;
				line.appendCodePoint(one);
			}
		}
		return line.toString();
	}

	private static boolean parts(int one) {
		return one <= ' ' || (one >= 0x7F && one <= 0x9F) || one == 0x2028 || one == 0x2029;
	}

	/** Embeddings, overrides and isolates, which act beyond the text that they are in. */
	private static boolean turns(int one) {
		return (one >= 0x202A && one <= 0x202E) || (one >= 0x2066 && one <= 0x2069) || one == 0xFEFF;
	}

	/**
	 * One line of bounded length.
	 * @param text any text
	 * @param most greatest number of code points, 1 or more
	 * @return the line, its end replaced by an ellipsis where it was too long
	 */
	public static String of(String text, int most) {
		return cut(of(text), most);
	}

	/**
	 * Shortens a line.
	 * @param line one line
	 * @param most greatest number of code points, 1 or more
	 * @return the line, its end replaced by an ellipsis where it was too long
	 */
	static String cut(String line, int most) {
		if (line.length() <= most || line.codePointCount(0, line.length()) <= most) {
			return line;
		}
		return line.substring(0, line.offsetByCodePoints(0, most - 1)).stripTrailing() + "…";
	}

	/**
	 * A name among other words. One that is written from right to left is set apart, so
	 * that it doesn't draw the words and figures beside it to its other side.
	 * @param line one line
	 * @return the same, between an isolate and its end where it has letters of the other
	 * direction
	 */
	static String apart(String line) {
		return rightToLeft(line) ? ISOLATE + line + POP_ISOLATE : line;
	}

	private static boolean rightToLeft(String line) {
		for (int at = 0; at < line.length(); at++) {
			// The first letter of that direction is in the Hebrew block.
			if (line.charAt(at) >= 0x0590) {
				byte direction = Character.getDirectionality(line.codePointAt(at));
				if (direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
						|| direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC) {
					return true;
				}
			}
		}
		return false;
	}

}
