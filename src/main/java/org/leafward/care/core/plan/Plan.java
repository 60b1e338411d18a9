package org.leafward.care.core.plan;

import java.util.List;

/**
 * What the rules want at a site.
 *
 * @param tasks dated tasks, each identifier once
 * @param gaps rules that are meant for a subject but give no task
 */
public record Plan(List<PlannedTask> tasks, List<Gap> gaps) {

	/** Nothing. */
	public static final Plan NOTHING = new Plan(List.of(), List.of());

	public Plan {
		tasks = List.copyOf(tasks);
		gaps = List.copyOf(gaps);
	}

}
