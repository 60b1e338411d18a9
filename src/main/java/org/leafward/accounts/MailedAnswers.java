package org.leafward.accounts;

/**
 * Takes answers to invitations that came by mail; implemented by whoever invited, asked
 * by the module that owns mail.
 */
public interface MailedAnswers {

	/**
	 * Takes an answer.
	 * @param token what stands behind the plus sign of the address that it was sent to;
	 * only who got the invitation knows it
	 * @param calendar the calendar part of the mail, from a stranger
	 * @return whether it was one, for an invitation that is known
	 */
	boolean take(String token, String calendar);

}
