package org.leafward.lookalikes.core;

import java.util.List;

/** Ranks causes by answers and record. Pure. */
public final class Differential {

	private Differential() {
	}

	/**
	 * Ranks all causes.
	 * @param key the key
	 * @param answers what was answered; questions and answers that the key doesn't know
	 * are passed over
	 * @param record what the record says, without struck lines
	 * @return never certain
	 */
	public static Ranking rank(Key key, Answers answers, List<RecordLine> record) {
		throw new UnsupportedOperationException();
	}

}
