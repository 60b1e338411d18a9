package org.leafward.care;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.state.StandingWords;
import org.leafward.care.core.state.TaskLifecycle;
import org.leafward.care.store.HistoryTable;
import org.leafward.care.store.LogTable;
import org.leafward.measure.DayWords;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where tasks stand today, each by the day at its site. */
@Service
@Transactional(readOnly = true)
public class TaskStates {

	private final Register register;

	private final HistoryTable history;

	private final LogTable log;

	private final Clock clock;

	TaskStates(Register register, HistoryTable history, LogTable log, Clock clock) {
		this.register = register;
		this.history = history;
		this.log = log;
		this.clock = clock;
	}

	/**
	 * Where tasks stand.
	 * @param tasks the tasks, of at most 1,000 sites
	 * @return one for each task whose site is there
	 */
	public Map<TaskId, TaskNow> of(Collection<CareTask> tasks) {
		List<TaskId> ids = tasks.stream().map(CareTask::id).toList();
		Map<TaskId, List<TaskChange>> changes = this.history.of(ids);
		Map<TaskId, LogEntry> entries = this.log.ofTasks(ids);
		Map<SiteId, Site> sites = this.register.find(tasks.stream().map(CareTask::site).distinct().toList())
			.stream()
			.collect(Collectors.toMap(Site::id, Function.identity()));
		Map<TaskId, TaskNow> standings = new HashMap<>();
		for (CareTask task : tasks) {
			Site site = sites.get(task.site());
			if (site != null) {
				standings.put(task.id(),
						now(task, site, changes.getOrDefault(task.id(), List.of()), entries.get(task.id())));
			}
		}
		return standings;
	}

	private TaskNow now(CareTask task, Site site, List<TaskChange> history, @Nullable LogEntry entry) {
		TaskLifecycle lifecycle = TaskMoves.lifecycle(task, history, site);
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		Optional<TaskChange> back = history.isEmpty() ? Optional.empty()
				: Optional.of(history.get(history.size() - 1)).filter(TaskChange::reopened);
		String words = StandingWords.of(lifecycle.on(today), task,
				(entry != null && task.state() == TaskState.DONE) ? entry.day() : null);
		if (back.isPresent()) {
			words += " It was withdrawn and came back on %s."
				.formatted(DayWords.of(LocalDate.ofInstant(back.get().at(), site.zone())));
		}
		return new TaskNow(lifecycle.on(today), words, back.isPresent(), lifecycle.allowed(today),
				lifecycle.doneFrom().filter(today::isBefore).orElse(null));
	}

	/**
	 * What became of a task.
	 * @param task the task
	 * @return oldest first, at most 1,000
	 */
	public List<TaskChange> history(TaskId task) {
		return this.history.of(task);
	}

}
