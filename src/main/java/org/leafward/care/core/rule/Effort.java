package org.leafward.care.core.rule;

import java.util.List;
import java.util.Set;

/**
 * How much work a task is and what it takes.
 *
 * @param minutes person-minutes, 0 when the rule doesn't say, at most 960
 * @param per what the minutes are counted for
 * @param skills what whoever does it must be able or allowed to do, as codes of the rule
 * pack schema
 * @param tools what to bring, in the order written
 */
public record Effort(int minutes, Per per, Set<String> skills, List<String> tools) {

	/** Nothing said. */
	public static final Effort UNKNOWN = new Effort(0, Per.PLANTING, Set.of(), List.of());

	/** What minutes are counted for. */
	public enum Per {

		/** For each plant of a planting. */
		PLANT,

		/** For a planting, however many plants it has. */
		PLANTING,

		/** For a site, however many plantings it has. */
		SITE

	}

	public Effort {
		skills = Set.copyOf(skills);
		tools = List.copyOf(tools);
		if (minutes < 0 || minutes > 960) {
			throw new IllegalArgumentException("%d person-minutes are outside 0 to 960".formatted(minutes));
		}
	}

	/**
	 * The work for a planting.
	 * @param plants number of plants, 1 or more
	 * @return person-minutes
	 */
	public int minutesFor(int plants) {
		return (this.per == Per.PLANT) ? Math.multiplyExact(this.minutes, plants) : this.minutes;
	}

}
