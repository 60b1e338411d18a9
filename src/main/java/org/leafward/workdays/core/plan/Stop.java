package org.leafward.workdays.core.plan;

import java.util.List;

/**
 * What a team does at one site.
 *
 * @param site identifier
 * @param travelMinutes minutes to get there from the stop before; 0 at the first, where
 * people meet
 * @param tasks what is done, the most important first; one at least
 */
public record Stop(String site, int travelMinutes, List<Placed> tasks) {

	public Stop {
		tasks = List.copyOf(tasks);
	}

}
