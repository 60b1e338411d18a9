package org.leafward.workdays.core.plan;

/** Chooses days and puts tasks on them. */
public interface CrewPlanner {

	/**
	 * Makes a plan. It takes up to some seconds for large problems.
	 * @param problem what there is to do, and who can when
	 * @return a plan in which no task lies outside its window or in a hold-off, nobody is
	 * at two sites at once, and each pin that is possible is kept
	 */
	CrewPlan plan(CrewProblem problem);

}
