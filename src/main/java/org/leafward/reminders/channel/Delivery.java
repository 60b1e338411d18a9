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
		 * It was handed on whole, and then there was no word of what came of it (RFC 1047). It
		 * may have arrived, so it is tried once more at most, under the same name.
		 */
		UNCERTAIN,

		/** Never, for a reason that lies with whoever should have got it. */
		REFUSED,

		/**
		 * Never, for a reason that lies with us: how the server is set up, what is thought of it
		 * or what it wrote. The operator has to know, and the address is as good as before.
		 */
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
