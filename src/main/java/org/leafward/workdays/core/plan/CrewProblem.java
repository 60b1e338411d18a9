package org.leafward.workdays.core.plan;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * What a plan of workdays is made from.
 *
 * @param sites where there is something to do, at most 200
 * @param tasks what there is to do, at most 2000
 * @param dates days on which the group could work, at most 120
 * @param rules what holds for all of them
 * @param before on which day each task stood in the plan before, by the task's
 * identifier; empty for a first plan
 * @param seed the same problem with the same seed has the same plan
 */
public record CrewProblem(List<CrewSite> sites, List<CrewTask> tasks, List<CrewDate> dates, CrewRules rules,
		Map<String, LocalDate> before, long seed) {

	/** Most sites of a problem. */
	public static final int SITES = 200;

	/** Most tasks of a problem. */
	public static final int TASKS = 2000;

	/** Most dates of a problem. */
	public static final int DATES = 120;

	public CrewProblem {
		sites = List.copyOf(sites);
		tasks = List.copyOf(tasks);
		dates = List.copyOf(dates);
		before = Map.copyOf(before);
		if (sites.size() > SITES || tasks.size() > TASKS || dates.size() > DATES) {
			throw new IllegalArgumentException("%d sites, %d tasks, %d dates are more than can be planned at once"
				.formatted(sites.size(), tasks.size(), dates.size()));
		}
		Set<String> known = distinct(sites, CrewSite::id, "site");
		distinct(tasks, CrewTask::id, "task");
		distinct(dates, (date) -> date.day().toString(), "date");
		for (CrewTask task : tasks) {
			if (!known.contains(task.site())) {
				throw new IllegalArgumentException("'%s' is at no known site".formatted(task.title()));
			}
		}
	}

	private static <T> Set<String> distinct(List<T> all, Function<T, String> id, String what) {
		Set<String> ids = new HashSet<>();
		for (T one : all) {
			if (!ids.add(id.apply(one))) {
				throw new IllegalArgumentException("the %s '%s' is there twice".formatted(what, id.apply(one)));
			}
		}
		return ids;
	}

}
