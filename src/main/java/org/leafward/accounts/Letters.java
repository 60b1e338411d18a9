package org.leafward.accounts;

/** Sends mails that must not be kept; implemented by the module that owns mail. */
public interface Letters {

	/**
	 * Whether there is a mail server at all.
	 * @return false when a letter can only be shown
	 */
	boolean canSend();

	/**
	 * Sends a letter in the background, so that nobody can tell by the time that it takes
	 * whom we know. Trouble is logged without the letter's text.
	 * @param letter what to send
	 */
	void send(Letter letter);

}
