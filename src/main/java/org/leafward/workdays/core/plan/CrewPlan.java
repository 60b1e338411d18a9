package org.leafward.workdays.core.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which days, who goes where, what is done, and what has no day.
 *
 * @param workdays the days, in order
 * @param unplaced what has no day, the most important first
 * @param points what the plan is worth by {@link PlanCosts}; more is better
 */
public record CrewPlan(List<Workday> workdays, List<Unplaced> unplaced, long points) {

	public CrewPlan {
		workdays = List.copyOf(workdays);
		unplaced = List.copyOf(unplaced);
	}

	/**
	 * The day of each task, as {@link CrewProblem#before()} wants it the next time.
	 * @return days by identifiers of tasks
	 */
	public Map<String, LocalDate> days() {
		Map<String, LocalDate> days = new TreeMap<>();
		for (Workday workday : this.workdays) {
			for (TeamDay team : workday.teams()) {
				for (Stop stop : team.stops()) {
					stop.tasks().forEach((placed) -> days.put(placed.task(), workday.day()));
				}
			}
		}
		return days;
	}

}
