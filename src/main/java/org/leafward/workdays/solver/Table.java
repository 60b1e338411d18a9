package org.leafward.workdays.solver;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.workdays.core.board.Refill;
import org.leafward.workdays.core.board.Standing;

/** All tasks with their places. */
@PlanningSolution
public class Table {

	@PlanningEntityCollectionProperty
	private List<TaskPlace> places = List.of();

	@PlanningScore
	private @Nullable HardMediumSoftLongScore score;

	private @Nullable Bench bench;

	/** What all copies of a table share: the standing of the one that is worked on. */
	static final class Bench {

		private final Standing standing;

		private final Refill refill;

		Bench(Standing standing) {
			this.standing = standing;
			this.refill = new Refill(standing);
		}

		Refill refill() {
			return this.refill;
		}

		Standing standing() {
			return this.standing;
		}

	}

	/** For the solver. */
	public Table() {
	}

	Table(List<TaskPlace> places, Bench bench) {
		this.places = places;
		this.bench = bench;
	}

	public List<TaskPlace> getPlaces() {
		return this.places;
	}

	public void setPlaces(List<TaskPlace> places) {
		this.places = places;
	}

	public @Nullable HardMediumSoftLongScore getScore() {
		return this.score;
	}

	public void setScore(@Nullable HardMediumSoftLongScore score) {
		this.score = score;
	}

	/** The standing of the table that is worked on. */
	Standing standing() {
		return shared().standing();
	}

	/** Fills that standing. */
	Refill refill() {
		return shared().refill();
	}

	private Bench shared() {
		Bench shared = this.bench;
		if (shared == null) {
			throw new IllegalStateException("the solver made a table without a bench");
		}
		return shared;
	}

}
