package org.leafward.care;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * A task went from one state to another.
 *
 * @param task the task
 * @param at when
 * @param from the state before
 * @param to the state after
 * @param because why, a sentence for readers; null when there is nothing to say
 * @param by who did it; null when planning did
 */
public record TaskChange(TaskId task, Instant at, TaskState from, TaskState to, @Nullable String because,
		@Nullable PersonId by) {

	/**
	 * Whether planning wants a withdrawn task again.
	 * @return true for withdrawn to planned
	 */
	public boolean reopened() {
		return this.from == TaskState.WITHDRAWN && this.to == TaskState.PLANNED;
	}

}
