package org.leafward.reminders;

/**
 * What a message says, in each of the forms that a channel may need.
 *
 * @param subject one line
 * @param text plain text, lines ending in LF
 * @param html a whole HTML document with the same content
 * @param brief for a small screen, one line of at most {@value #LONGEST_BRIEF} characters
 * @param link address of the page that tells more
 * @param content the same for programs, a JSON object of at most
 * {@value #LONGEST_CONTENT} characters
 */
public record MessageText(String subject, String text, String html, String brief, String link, String content) {

	/** Longest brief form. */
	public static final int LONGEST_BRIEF = 240;

	/** Longest form for programs. */
	public static final int LONGEST_CONTENT = 16_000;

}
