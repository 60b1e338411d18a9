package org.leafward.care.core.review;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;

/**
 * How many tasks came to what.
 *
 * @param onTime done on time
 * @param late done late
 * @param leftOut left out with a reason
 * @param missed missed
 * @param notNeeded no longer needed
 * @param open still open
 */
public record Tally(int onTime, int late, int leftOut, int missed, int notNeeded, int open) {

	/**
	 * Counts.
	 * @param outcomes any number
	 * @return the counts
	 */
	public static Tally of(Collection<Outcome> outcomes) {
		Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
		outcomes.forEach((outcome) -> counts.merge(outcome, 1, Integer::sum));
		return new Tally(counts.getOrDefault(Outcome.ON_TIME, 0), counts.getOrDefault(Outcome.LATE, 0),
				counts.getOrDefault(Outcome.LEFT_OUT, 0), counts.getOrDefault(Outcome.MISSED, 0),
				counts.getOrDefault(Outcome.NOT_NEEDED, 0), counts.getOrDefault(Outcome.OPEN, 0));
	}

	/**
	 * All of them.
	 * @return the sum
	 */
	public int total() {
		return this.onTime + this.late + this.leftOut + this.missed + this.notNeeded + this.open;
	}

	/**
	 * What was done.
	 * @return on time or late
	 */
	public int done() {
		return this.onTime + this.late;
	}

	/**
	 * What was called for: all but what was no longer needed.
	 * @return the sum of the rest
	 */
	public int asked() {
		return total() - this.notNeeded;
	}

}
