package org.leafward.reminders.channel.push;

import org.jspecify.annotations.Nullable;
import org.leafward.reminders.channel.Delivery.Outcome;

/**
 * What a push service said about one browser.
 *
 * @param outcome what came of it
 * @param gone whether the browser takes no messages any more
 * @param reason for all but success; names the push service, never the endpoint
 */
record PushAnswer(Outcome outcome, boolean gone, @Nullable String reason) {

	private static final int TOO_OFTEN = 429;

	private static final int TIMED_OUT = 408;

	/**
	 * Judges a status (RFC 8030, sections 5 and 7.3; RFC 8292, section 4.2).
	 * @param status 100 to 599
	 * @param host the push service
	 */
	static PushAnswer of(int status, String host) {
		if (status >= 200 && status < 300) {
			return new PushAnswer(Outcome.TAKEN, false, null);
		}
		if (status == 404 || status == 410) {
			return new PushAnswer(Outcome.REFUSED, true, "%s knows the browser no more (%d)".formatted(host, status));
		}
		boolean later = status >= 500 || status == TOO_OFTEN || status == TIMED_OUT;
		return new PushAnswer(later ? Outcome.LATER : Outcome.REFUSED, false, "%s answered %d".formatted(host, status));
	}

	/**
	 * No answer came. The address is a stranger's, so it says nothing about other
	 * people's push services.
	 * @param host the push service
	 * @param what what happened, in a few words
	 */
	static PushAnswer none(String host, String what) {
		return new PushAnswer(Outcome.LATER, false, "no answer from %s: %s".formatted(host, what));
	}

}
