package org.leafward.care.core.plan;

import java.util.List;

/**
 * What the rules want for one or more plantings.
 *
 * @param tasks dated tasks, each identifier once
 * @param gaps rules that could not be dated
 */
public record Plan(List<PlannedTask> tasks, List<Gap> gaps) {

	public Plan {
		tasks = List.copyOf(tasks);
		gaps = List.copyOf(gaps);
	}

}
