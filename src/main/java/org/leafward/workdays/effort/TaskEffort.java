package org.leafward.workdays.effort;

import java.util.List;
import java.util.Set;

/**
 * What a task asks of volunteers.
 *
 * @param personMinutes 5 to 2,400, in steps of five
 * @param skills codes as in rule packs, for example "pesticide-licence"
 * @param tools what to bring, in order
 * @param source where the figures are from, in words
 */
public record TaskEffort(int personMinutes, Set<String> skills, List<String> tools, String source) {

	/** Longer than a team's week: such a task is divided by hand. */
	static final int MOST = 2400;

	public TaskEffort {
		skills = Set.copyOf(skills);
		tools = List.copyOf(tools);
	}

	static int rounded(double minutes) {
		return (int) Math.max(5, Math.min(MOST, Math.ceil(minutes / 5) * 5));
	}

}
