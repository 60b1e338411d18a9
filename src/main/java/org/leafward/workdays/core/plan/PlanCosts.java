package org.leafward.workdays.core.plan;

/**
 * What weighs against what, in points; a task that is placed earns ten points for each
 * step of its importance. Choices of ours: no source says what a volunteer's Saturday is
 * worth.
 *
 * @param workday points that calling a day costs: work of less importance doesn't call
 * one
 * @param team points for each team that goes out, as somebody has to lead it
 * @param travelMinute points for each minute that a team is on its way
 * @param moved points for a task that was on another day before: people know the plan
 * @param newDay points more for a day that wasn't planned before
 */
public record PlanCosts(int workday, int team, int travelMinute, int moved, int newDay) {

	/** Points for one step of importance. */
	public static final int IMPORTANCE = 10;

	/**
	 * One task whose neglect does harm (importance 95 and up) calls a day with one team,
	 * otherwise it takes two or more.
	 */
	public static final PlanCosts USUAL = new PlanCosts(800, 150, 2, 200, 400);

	public PlanCosts {
		if (workday < 0 || team < 0 || travelMinute < 0 || moved < 0 || newDay < 0
				|| Math.max(Math.max(workday, team), Math.max(newDay, Math.max(travelMinute, moved))) > 1_000_000) {
			throw new IllegalArgumentException("costs lie between 0 and a million points");
		}
	}

}
