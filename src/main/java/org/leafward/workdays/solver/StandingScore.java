package org.leafward.workdays.solver;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import org.jspecify.annotations.Nullable;
import org.leafward.workdays.core.board.Standing;

/** Hands the moves of the solver on to the standing, and its worth back. */
public class StandingScore implements IncrementalScoreCalculator<Table, HardMediumSoftLongScore> {

	private @Nullable Standing standing;

	@Override
	public void resetWorkingSolution(Table table) {
		Standing all = table.standing();
		all.clear();
		table.getPlaces().forEach((place) -> all.put(place.getTask(), place.number()));
		this.standing = all;
	}

	@Override
	public void beforeEntityAdded(Object entity) {
	}

	@Override
	public void afterEntityAdded(Object entity) {
	}

	@Override
	public void beforeVariableChanged(Object entity, String variable) {
	}

	@Override
	public void afterVariableChanged(Object entity, String variable) {
		TaskPlace place = (TaskPlace) entity;
		known().put(place.getTask(), place.number());
	}

	@Override
	public void beforeEntityRemoved(Object entity) {
	}

	@Override
	public void afterEntityRemoved(Object entity) {
	}

	@Override
	public HardMediumSoftLongScore calculateScore() {
		Standing all = known();
		return HardMediumSoftLongScore.of(-all.overload(), -all.loose(), all.points());
	}

	private Standing known() {
		Standing all = this.standing;
		if (all == null) {
			throw new IllegalStateException("asked before a table was set");
		}
		return all;
	}

}
