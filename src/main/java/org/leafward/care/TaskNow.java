package org.leafward.care;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.state.TaskCommand;
import org.leafward.care.core.state.TaskStanding;

/**
 * Where a task stands today, for readers.
 *
 * @param standing the standing
 * @param words the same in words, for example "Done on Thu 12 Nov 2026."
 * @param cameBack whether it was withdrawn once and stands again
 * @param allowed what may be done with it
 * @param doneFrom the first day on which it can be noted as done, while that is still to
 * come; null otherwise
 */
public record TaskNow(TaskStanding standing, String words, boolean cameBack, Set<TaskCommand> allowed,
		@Nullable LocalDate doneFrom) {

	public TaskNow {
		allowed = Set.copyOf(allowed);
	}

	public boolean mayDo() {
		return this.allowed.contains(TaskCommand.DONE);
	}

	public boolean maySkip() {
		return this.allowed.contains(TaskCommand.SKIP);
	}

	public boolean mayUndo() {
		return this.allowed.contains(TaskCommand.UNDO);
	}

}
