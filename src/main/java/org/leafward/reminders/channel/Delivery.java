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

		/** Never. */
		REFUSED

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
