package org.leafward.care.web;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskNow;
import org.leafward.care.TaskState;
import org.leafward.care.TaskStates;
import org.leafward.care.core.state.TaskStanding;
import org.leafward.pages.TaskLine;
import org.springframework.stereotype.Component;

/**
 * What a site wants today, next, and what became of the rest lately.
 *
 * @param now what is open today: work first, then what to look for, then what to leave
 * @param next what begins later
 * @param lately what was done, left out, missed or withdrawn
 */
record SiteNow(List<TaskLine> now, List<TaskLine> next, List<TaskLine> lately) {

	private static final int MOST_NOW = 20;

	private static final int MOST = 8;

	/** Days that something stays in view after it changed or passed. */
	private static final int LATELY_DAYS = 14;

	private static final Set<TaskStanding> BEHIND = Set.of(TaskStanding.DONE, TaskStanding.SKIPPED, TaskStanding.MISSED,
			TaskStanding.WITHDRAWN);

	/**
	 * The same for those who may not change it: nothing to press, and nothing of what
	 * people noted.
	 */
	static SiteNow toLookAt(List<CareTask> tasks, LocalDate today) {
		return new SiteNow(Gathered.lines(open(tasks, today)).stream().limit(MOST_NOW).toList(), next(tasks, today),
				List.of());
	}

	/** Whether more of what comes next would not be shown. */
	boolean full() {
		return this.next.size() >= MOST;
	}

	private static List<CareTask> open(List<CareTask> tasks, LocalDate today) {
		return tasks.stream()
			.filter((task) -> task.state() == TaskState.PLANNED && task.window().contains(today))
			.toList();
	}

	private static List<TaskLine> next(List<CareTask> tasks, LocalDate today) {
		List<CareTask> later = tasks.stream()
			.filter((task) -> task.state() == TaskState.PLANNED && task.window().from().isAfter(today))
			.toList();
		return Gathered.lines(Gathered.withoutRepeats(later)).stream().limit(MOST).toList();
	}

	/** Reads where tasks stand. */
	@Component
	static class Reader {

		private final TaskStates states;

		Reader(TaskStates states) {
			this.states = states;
		}

		SiteNow of(List<CareTask> tasks, LocalDate today) {
			List<CareTask> open = open(tasks, today);
			List<CareTask> past = tasks.stream().filter((task) -> lately(task, today)).toList();
			Map<TaskId, TaskNow> standings = this.states.of(Stream.concat(open.stream(), past.stream()).toList());
			return new SiteNow(
					Gathered.lines(open, standings, "site")
						.stream()
						.sorted(Comparator.comparing((TaskLine line) -> rank(line))
							.thenComparing(Gathered.byUrgency(today)))
						.limit(MOST_NOW)
						.toList(),
					next(tasks, today),
					Gathered
						.lines(past.stream().filter((task) -> behind(standings.get(task.id()))).toList(), standings,
								"site")
						.stream()
						.sorted(Comparator.comparing(TaskLine::to).reversed())
						.limit(MOST)
						.toList());
		}

		private static boolean behind(@Nullable TaskNow now) {
			return now != null && BEHIND.contains(now.standing());
		}

		private static int rank(TaskLine line) {
			return switch (line.mark()) {
				case DO, RAMP -> 0;
				case HOLD_OFF -> 2;
				default -> 1;
			};
		}

		private static boolean lately(CareTask task, LocalDate today) {
			LocalDate since = today.minusDays(LATELY_DAYS);
			if (task.state() == TaskState.WITHDRAWN && task.window().from().isAfter(today.plusDays(LATELY_DAYS))) {
				return false;
			}
			LocalDate changed = LocalDate.ofInstant(task.changedAt(), ZoneOffset.UTC);
			return (task.state() == TaskState.PLANNED) ? task.kind() != TaskKind.HOLD_OFF
					&& task.window().to().isBefore(today) && !task.window().to().isBefore(since)
					: !changed.isBefore(since);
		}

	}

}
