package org.leafward.climate;

import java.util.function.Supplier;

/**
 * Holds an answer to one version of each station's record. The stations that a question
 * begins with name their versions, and {@link RecordCache} gives out no other; where one
 * is gone, the whole question is asked again, so that no answer mixes two.
 */
final class OneVersion {

	/**
	 * Records change every few hours at most, so a second try is nearly always enough.
	 */
	private static final int MOST_TRIES = 5;

	private OneVersion() {
	}

	/**
	 * Asks.
	 * @param question reads its stations anew each time, and leaves nothing behind
	 * @return its answer
	 * @throws RecordMovedOn when records change faster than the question is answered
	 */
	static <T> T of(Supplier<T> question) {
		return of(() -> {
		}, question);
	}

	/**
	 * Asks with stations that may have been read ahead.
	 * @param around the stations; they are read anew when a record moved on
	 * @param question as above
	 * @return its answer
	 */
	static <T> T of(StationsAround around, Supplier<T> question) {
		return of(around::renew, question);
	}

	private static <T> T of(Runnable renew, Supplier<T> question) {
		for (int tries = 1;; tries++) {
			try {
				return question.get();
			}
			catch (RecordMovedOn ex) {
				if (tries == MOST_TRIES) {
					throw ex;
				}
				renew.run();
			}
		}
	}

}
