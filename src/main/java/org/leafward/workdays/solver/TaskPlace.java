package org.leafward.workdays.solver;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.workdays.core.board.Slot;

/** A task and where it is put; only slots that admit it are tried. */
@PlanningEntity
public class TaskPlace {

	@PlanningId
	private int task;

	private int site;

	@ValueRangeProvider
	private List<Slot> admitting = List.of();

	@PlanningVariable(allowsUnassigned = true)
	private @Nullable Slot slot;

	/** For the solver. */
	public TaskPlace() {
	}

	TaskPlace(int task, int site, List<Slot> admitting, @Nullable Slot slot) {
		this.task = task;
		this.site = site;
		this.admitting = admitting;
		this.slot = slot;
	}

	public int getTask() {
		return this.task;
	}

	public int getSite() {
		return this.site;
	}

	public List<Slot> getAdmitting() {
		return this.admitting;
	}

	public @Nullable Slot getSlot() {
		return this.slot;
	}

	public void setSlot(@Nullable Slot slot) {
		this.slot = slot;
	}

	/** Slots are told apart by their numbers; comparing all parts of them takes long. */
	boolean admits(Slot wanted) {
		for (Slot one : this.admitting) {
			if (one.number() == wanted.number()) {
				return true;
			}
		}
		return false;
	}

	/** The number of its slot, -1 for nowhere. */
	int number() {
		Slot where = this.slot;
		return (where != null) ? where.number() : -1;
	}

}
