package org.leafward.lookalikes.core;

import java.util.List;
import java.util.Optional;

/** Chooses what to ask next. Pure. */
public final class NextQuestion {

	/** More questions than that are not asked. */
	public static final int MOST = 12;

	private NextQuestion() {
	}

	/**
	 * The question that parts the remaining causes best.
	 * @param key the key
	 * @param answers what was answered, "can't tell" included
	 * @param record what the record says, without struck lines
	 * @return empty when {@value #MOST} were answered, none is left, or none would change
	 * anything any more
	 */
	public static Optional<Question> after(Key key, Answers answers, List<RecordLine> record) {
		throw new UnsupportedOperationException();
	}

}
