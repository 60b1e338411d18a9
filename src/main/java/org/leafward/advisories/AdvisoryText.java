package org.leafward.advisories;

import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;

/**
 * The words of an advisory in one language. Plain text, no mark-up; line ends are kept.
 *
 * @param headline one line, 10 to {@value #HEADLINE} characters
 * @param what what comes, 10 to {@value #LONGEST} characters
 * @param where the places in words
 * @param when the time in words
 * @param impacts what it does to plants
 * @param toDo what to do, with the usual cautions
 */
public record AdvisoryText(String headline, String what, String where, String when, String impacts, String toDo) {

	/** Readers of CAP cut longer ones. */
	public static final int HEADLINE = 140;

	/** Characters of a part. */
	public static final int LONGEST = 2000;

	private static final int SHORTEST = 10;

	/**
	 * Checks the parts and takes what can't stand in XML.
	 * @throws BadInput with every part that is missing or too long
	 */
	public AdvisoryText {
		headline = plain(headline).replaceAll("\\s+", " ");
		what = plain(what);
		where = plain(where);
		when = plain(when);
		impacts = plain(impacts);
		toDo = plain(toDo);
		Findings findings = new Findings();
		check(findings, "headline", headline, SHORTEST, HEADLINE);
		check(findings, "what", what, SHORTEST, LONGEST);
		check(findings, "where", where, 2, LONGEST);
		check(findings, "when", when, 2, LONGEST);
		check(findings, "impacts", impacts, SHORTEST, LONGEST);
		check(findings, "toDo", toDo, SHORTEST, LONGEST);
		if (headline.equals(what)) {
			findings.check(() -> {
				throw new BadInput("the text says no more than the headline", "what",
						"say what comes, in a sentence more");
			});
		}
		findings.end();
	}

	private static void check(Findings findings, String field, String text, int least, int most) {
		findings.check(() -> {
			if (text.length() < least || text.length() > most) {
				throw new BadInput("%d characters are given".formatted(text.length()), field,
						"write %d to %d".formatted(least, most));
			}
			// CAP carries plain text; readers would show the signs of mark-up.
			if (text.matches("(?s).*(</?[a-zA-Z][^>]*>|&#?\\w{2,8};).*")) {
				throw new BadInput("the text holds mark-up", field,
						"write plain text; an empty line makes a paragraph");
			}
		});
	}

	/** Without control characters, which XML 1.0 forbids (section 2.2). */
	private static String plain(String text) {
		StringBuilder kept = new StringBuilder();
		text.replace("\r\n", "\n")
			.replace('\r', '\n')
			.codePoints()
			.filter((one) -> one == '\n' || one == '\t' || (one >= 0x20 && one < 0x7F) || (one >= 0xA0 && one <= 0xD7FF)
					|| (one >= 0xE000 && one <= 0xFFFD) || one >= 0x10000)
			.forEach(kept::appendCodePoint);
		return kept.toString().strip();
	}

}
