package org.leafward.reminders.core;

/**
 * Makes one line of text that others wrote, so that it can stand in a header or a line of
 * a mail. A header ends at CR LF (RFC 5322 section 2.2); a name that carried one could
 * add headers of its own.
 */
public final class OneLine {

	private OneLine() {
	}

	/**
	 * Replaces runs of white space, control characters and line separators by one space.
	 * @param text any text
	 * @return one line without space at its ends
	 */
	public static String of(String text) {
		return text.replaceAll("[\\s\\p{Cc}\\u2028\\u2029]+", " ").strip();
	}

	/**
	 * One line of bounded length.
	 * @param text any text
	 * @param most greatest number of code points, 1 or more
	 * @return the line, its end replaced by an ellipsis where it was too long
	 */
	public static String of(String text, int most) {
		String line = of(text);
		if (line.codePointCount(0, line.length()) <= most) {
			return line;
		}
		return line.substring(0, line.offsetByCodePoints(0, most - 1)).stripTrailing() + "…";
	}

}
