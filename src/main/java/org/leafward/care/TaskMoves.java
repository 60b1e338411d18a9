package org.leafward.care;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.core.state.FormerState;
import org.leafward.care.core.state.TaskCommand;
import org.leafward.care.core.state.TaskLifecycle;
import org.leafward.care.store.HistoryTable;
import org.leafward.care.store.StateTable;
import org.leafward.care.store.TaskTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;

/** Moves tasks from state to state as people say, and keeps the history. */
@Component
class TaskMoves {

	private final SiteTurn turn;

	private final TaskTable tasks;

	private final StateTable states;

	private final HistoryTable history;

	private final ApplicationEventPublisher events;

	TaskMoves(SiteTurn turn, TaskTable tasks, StateTable states, HistoryTable history,
			ApplicationEventPublisher events) {
		this.turn = turn;
		this.tasks = tasks;
		this.states = states;
		this.history = history;
		this.events = events;
	}

	/** The one site of some tasks, which the person may write in. */
	Site siteOf(List<TaskId> ids, @Nullable PersonId by) {
		if (ids.isEmpty() || ids.size() > CareLog.MOST_TOGETHER) {
			throw new BadInput("%d tasks are outside 1 to %d".formatted(ids.size(), CareLog.MOST_TOGETHER), "task",
					"take fewer at a time");
		}
		SiteId site = require(ids.get(0)).site();
		for (TaskId id : ids) {
			if (!require(id).site().equals(site)) {
				throw new NotThere("There is no task %s at this site".formatted(id));
			}
		}
		return this.turn.open(site, by);
	}

	private CareTask require(TaskId id) {
		return this.tasks.find(id).orElseThrow(() -> new NotThere("There is no task " + id));
	}

	boolean isDone(TaskId id) {
		return this.tasks.find(id).filter((task) -> task.state() == TaskState.DONE).isPresent();
	}

	/**
	 * Moves tasks in the caller's transaction.
	 * @param site their site, locked
	 * @param ids the tasks
	 * @param command what people want
	 * @param day the day of the work; today for what is no work
	 * @param because why; null when there is nothing to say
	 * @param by who; null for an operator
	 * @return the tasks that moved, as they were before
	 * @throws BadInput when none can
	 */
	List<CareTask> move(Site site, List<TaskId> ids, TaskCommand command, LocalDate day, @Nullable String because,
			@Nullable PersonId by) {
		Instant now = this.turn.now();
		List<CareTask> moved = new ArrayList<>();
		List<TaskChange> changes = new ArrayList<>();
		String refused = "";
		for (TaskId id : ids.stream().distinct().toList()) {
			CareTask task = require(id);
			TaskLifecycle.Answer answer = lifecycle(task, this.history.of(id), site).answer(command, day);
			TaskState to = answer.to();
			if (to == null) {
				refused = Optional.ofNullable(answer.refused()).orElse("");
				continue;
			}
			String why = (command == TaskCommand.UNDO) ? "Taken back." : because;
			changes.add(new TaskChange(id, now, task.state(), to, why, by));
			moved.add(task);
		}
		if (moved.isEmpty()) {
			throw new BadInput(refused.replaceFirst("\\.$", ""), "task", "look at the task to see where it stands");
		}
		changes.forEach(this.states::move);
		this.history.note(changes);
		this.events.publishEvent(new PlanChanged(site.id().value(), site.owner().value(), 0, changes.size(), 0, now));
		return moved;
	}

	static TaskLifecycle lifecycle(CareTask task, List<TaskChange> history, Site site) {
		return new TaskLifecycle(task.kind(), task.window(), task.state(), FormerState.of(history),
				LocalDate.ofInstant(task.createdAt(), site.zone()));
	}

}
