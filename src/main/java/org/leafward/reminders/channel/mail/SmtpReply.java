package org.leafward.reminders.channel.mail;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leafward.reminders.core.OneLine;

/**
 * How a mail server said no.
 *
 * @param code the reply code (RFC 5321 section 4.2), 400 to 599
 * @param enhanced the enhanced status code (RFC 3463), for example 5.1.1; empty where
 * there was none
 * @param words the whole reply on one line, at most {@value #LONGEST} characters
 */
record SmtpReply(int code, String enhanced, String words) {

	/** RFC 3463 section 3.1: says nothing beyond the class. */
	private static final Set<String> GENERAL = Set.of("", "5.0.0", "5.1.0");

	/** Longest reply that is kept. */
	static final int LONGEST = 500;

	/** RFC 2034 section 4: class, subject and detail begin the text of the reply. */
	private static final Pattern ENHANCED = Pattern.compile("[45]\\d\\d[ -]([45]\\.\\d{1,3}\\.\\d{1,3})(?!\\S).*",
			Pattern.DOTALL);

	/** RFC 3463 sections 3.2 and 3.3, with the codes that RFC 7505 and RFC 7504 added. */
	private static final Pattern NOBODY = Pattern.compile("5\\.1\\.(?:1|2|3|6|10)|5\\.2\\.1");

	/**
	 * The state of a mailbox or of the system that it lies on, which may be another
	 * tomorrow.
	 */
	private static final Pattern THEIRS = Pattern.compile("5\\.[234]\\.\\d{1,3}");

	/** What a refusal without an enhanced code says when it isn't about the mailbox. */
	private static final Pattern POLICY = Pattern
		.compile("(?i)relay|polic|spam|block|black|reject listed|reputation|spf|dkim|dmarc|authenti|denied|not allowed|"
				+ "permi|sender|helo|tls|rdns|reverse");

	/**
	 * Reads a reply.
	 * @param code the reply code
	 * @param text all lines of the reply
	 * @return the reply
	 */
	static SmtpReply of(int code, String text) {
		Matcher enhanced = ENHANCED.matcher(text);
		return new SmtpReply(code, enhanced.matches() ? enhanced.group(1) : "", OneLine.of(text, LONGEST));
	}

	boolean passes() {
		return this.code < 500;
	}

	/** RFC 5321 section 3.8: with 421 the server ends the connection. */
	boolean hangsUp() {
		return this.code == 421;
	}

	/** RFC 4954 section 6: we should have signed in, or have encrypted first. */
	boolean wantsSignIn() {
		return this.code == 530 || this.code == 534 || this.code == 535 || this.code == 538;
	}

	/**
	 * Whether it says that the mailbox is none and won't be one again. The code 550 alone
	 * says so too, except that it is also used for policy (RFC 5321 section 4.2.3); then
	 * the words tell.
	 * @return false when in doubt
	 */
	boolean nobodyThere() {
		if (passes()) {
			return false;
		}
		if (vague()) {
			return (this.code == 550 || this.code == 551 || this.code == 553) && !POLICY.matcher(this.words).find();
		}
		// Postfix tells only at RCPT what it thinks of the sender.
		return NOBODY.matcher(this.enhanced).matches() && !this.words.toLowerCase(Locale.ROOT).contains("sender");
	}

	/** Whether only the three digits and the words say what it is about. */
	boolean vague() {
		return GENERAL.contains(this.enhanced);
	}

	/** Whether it is about the mailbox or its system, and not about us. */
	boolean theirs() {
		return nobodyThere() || THEIRS.matcher(this.enhanced).matches()
				|| (this.enhanced.isEmpty() && this.code == 552);
	}

}
