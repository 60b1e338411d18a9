package org.leafward.care.core.state;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskChange;
import org.leafward.care.TaskState;

/** What a task was before somebody did or skipped it, read from its history. */
public final class FormerState {

	private FormerState() {
	}

	/**
	 * The state that an undo leads back to. Work that was skipped first and then done
	 * goes back to skipped, and from there to what it was before.
	 * @param history all changes of the task, oldest first
	 * @return null when nobody has done or skipped it, or when that was taken back
	 */
	public static @Nullable TaskState of(List<TaskChange> history) {
		Deque<TaskState> before = new ArrayDeque<>();
		for (TaskChange change : history) {
			if (change.to() == TaskState.DONE && change.from() != TaskState.DONE
					|| change.to() == TaskState.SKIPPED && change.from() != TaskState.DONE) {
				before.push(change.from());
			}
			else if (!before.isEmpty() && (change.from() == TaskState.DONE || change.from() == TaskState.SKIPPED)) {
				before.pop();
			}
		}
		return before.peek();
	}

}
