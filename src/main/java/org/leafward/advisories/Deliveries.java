package org.leafward.advisories;

import java.util.SortedMap;

/**
 * What became of the messages of an advisory to people. Implemented by whoever sends
 * them; a server without one shows that nothing is known.
 */
public interface Deliveries {

	/**
	 * What became of messages.
	 *
	 * @param sent handed on, or kept to be read where no mail server is set up
	 * @param waiting still to leave
	 * @param failed refused for good, or too late to be of use
	 */
	record Delivered(long sent, long waiting, long failed) {

		/** None. */
		public static final Delivered NONE = new Delivered(0, 0, 0);

		/**
		 * Both together.
		 * @param other others
		 * @return the sums
		 */
		public Delivered with(Delivered other) {
			return new Delivered(this.sent + other.sent, this.waiting + other.waiting, this.failed + other.failed);
		}

	}

	/**
	 * What became of the messages of an advisory.
	 * @param id the advisory
	 * @return by the way in words, such as "E-mail"
	 */
	SortedMap<String, Delivered> of(AdvisoryId id);

	/**
	 * Whether people are still being looked up who are to be told.
	 * @param id the advisory
	 * @return true while more messages are made
	 */
	boolean making(AdvisoryId id);

}
