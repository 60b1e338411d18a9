package org.leafward.care.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskNow;
import org.leafward.care.TaskState;
import org.leafward.measure.DayWindow;
import org.leafward.pages.TaskLine;
import org.leafward.register.SiteId;

/**
 * The same work on the same days at the same site is one line for the reader, however
 * many plantings it is for. The line leads to the task of the first planting.
 */
final class Gathered {

	/** Plantings that are still named one by one. */
	private static final int MOST_NAMED = 3;

	private Gathered() {
	}

	private record Key(String rule, String title, DayWindow window, SiteId site, TaskState state, String standing) {
	}

	/**
	 * Of a repeat only the first one: who waters on Thursday need not read that it is due
	 * on Sunday, too.
	 * @param tasks the tasks, earliest first
	 * @return without the later repeats of a rule for a planting
	 */
	static List<CareTask> withoutRepeats(List<CareTask> tasks) {
		Set<List<Object>> seen = new HashSet<>();
		return tasks.stream().filter((task) -> seen.add(List.of(task.subject(), task.rule(), task.season()))).toList();
	}

	static List<TaskLine> lines(List<CareTask> tasks) {
		return lines(tasks, Map.of(), "");
	}

	/**
	 * Lines that say where they stand and can be acted on.
	 * @param tasks the tasks
	 * @param standings where they stand; those that are missing are for reading only
	 * @param back which page to come back to
	 * @return one line for what is alike
	 */
	static List<TaskLine> lines(List<CareTask> tasks, Map<TaskId, TaskNow> standings, String back) {
		Map<Key, List<CareTask>> groups = new LinkedHashMap<>();
		for (CareTask task : tasks) {
			TaskNow now = standings.get(task.id());
			groups
				.computeIfAbsent(new Key(task.rule(), task.text().title(), task.window(), task.site(), task.state(),
						(now != null) ? now.words() : ""), (key) -> new ArrayList<>())
				.add(task);
		}
		return groups.values()
			.stream()
			.map((group) -> Lines.standing(line(group), group, standings.get(group.get(0).id()), back))
			.toList();
	}

	/**
	 * The order in which things want doing: what is open already by its last day, what
	 * comes later by its first.
	 */
	static Comparator<TaskLine> byUrgency(LocalDate today) {
		return Comparator.comparing((TaskLine line) -> line.from().isBefore(today) ? today : line.from())
			.thenComparing(TaskLine::to);
	}

	/** One line for tasks that differ in the planting only. */
	static TaskLine line(List<CareTask> group) {
		TaskLine first = Lines.line(group.get(0));
		if (group.size() == 1) {
			return first;
		}
		List<String> names = group.stream().map(CareTask::plant).sorted().toList();
		String plants = (names.size() <= MOST_NAMED) ? String.join("; ", names)
				: String.join("; ", names.subList(0, MOST_NAMED - 1))
						+ "; and %d more plantings".formatted(names.size() - MOST_NAMED + 1);
		return new TaskLine(first.mark(), first.title(), plants, first.site(), first.from(), first.to(), first.href(),
				first.note(), first.withdrawn());
	}

}
