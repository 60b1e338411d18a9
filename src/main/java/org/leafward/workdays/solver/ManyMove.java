package org.leafward.workdays.solver;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leafward.workdays.core.board.Slot;

/** Several tasks that change their places at once. */
class ManyMove extends AbstractMove<Table> {

	private final List<Change> changes;

	/**
	 * A task and where it goes.
	 *
	 * @param place the task
	 * @param to where it goes; null for nowhere
	 */
	record Change(TaskPlace place, @Nullable Slot to) {
	}

	ManyMove(List<Change> changes) {
		this.changes = changes;
	}

	@Override
	public boolean isMoveDoable(ScoreDirector<Table> director) {
		return this.changes.stream().anyMatch((change) -> !Objects.equals(change.place().getSlot(), change.to()));
	}

	@Override
	protected void doMoveOnGenuineVariables(ScoreDirector<Table> director) {
		for (Change change : this.changes) {
			director.beforeVariableChanged(change.place(), "slot");
			change.place().setSlot(change.to());
			director.afterVariableChanged(change.place(), "slot");
		}
	}

	@Override
	public String toString() {
		return this.changes.size() + " tasks";
	}

}
