package org.leafward.reminders.channel.mail;

/**
 * Something about how mails are set up.
 *
 * @param level how good it is
 * @param what what was looked at
 * @param words what was found, and how to mend it
 */
public record MailFinding(Level level, String what, String words) {

	/** How good it is. */
	public enum Level {

		/** As it should be. */
		GOOD("good"),

		/** It works, and could be better. */
		LOOK("could be better"),

		/** Mails don't leave or don't arrive that way. */
		BAD("must be mended");

		private final String words;

		Level(String words) {
			this.words = words;
		}

		public String words() {
			return this.words;
		}

	}

	static MailFinding good(String what, String words) {
		return new MailFinding(Level.GOOD, what, words);
	}

	static MailFinding look(String what, String words) {
		return new MailFinding(Level.LOOK, what, words);
	}

	static MailFinding bad(String what, String words) {
		return new MailFinding(Level.BAD, what, words);
	}

}
