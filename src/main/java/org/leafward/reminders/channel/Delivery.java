package org.leafward.reminders.channel;

import org.jspecify.annotations.Nullable;

/**
 * What came of handing a mail on.
 *
 * @param outcome what came of it
 * @param reason what the other side said, for all but success; one line
 */
public record Delivery(Outcome outcome, @Nullable String reason) {

	/** What can come of it. */
	public enum Outcome {

		/** Taken; the other side answers for it now. */
		TAKEN,

		/** There is no other side; the mail stays where it is. */
		KEPT,

		/** Not now, this mail. */
		LATER,

		/** Nobody could be reached, so other mails would fare no better. */
		UNREACHABLE,

		/**
		 * It left, and the connection was lost before the other side said whether it took
		 * it.
		 */
		UNCERTAIN,

		/** Never, to this address. */
		REFUSED,

		/** Never, for a reason that lies with this server; the operator has to look. */
		OUR_FAULT

	}

	/**
	 * A good outcome.
	 * @param outcome taken or kept
	 * @return without a reason
	 */
	public static Delivery of(Outcome outcome) {
		return new Delivery(outcome, null);
	}

}
