package org.leafward.workdays.core.plan;

/**
 * A task that has no day.
 *
 * @param task identifier
 * @param cause the first thing that would have to change
 * @param why a sentence
 */
public record Unplaced(String task, Cause cause, String why) {

	/** What keeps a task from having a day, the most stubborn first. */
	public enum Cause {

		/** No candidate date lies in its window. */
		NO_DATE,

		/** A hold-off covers each candidate date of its window. */
		HELD_OFF,

		/** Its pin or the coordinator's other wishes leave no day. */
		WISHES,

		/** The site is closed on each of them. */
		CLOSED,

		/** Nobody is expected, or there is no light. */
		NO_CREW,

		/** Nobody who is expected has a skill. */
		SKILL,

		/** The group hasn't a tool. */
		TOOL,

		/** More than a team can do on a day. */
		TOO_LARGE,

		/** The days are full of work that counts for more, or its tools are elsewhere. */
		FULL,

		/** As many days are called as may be. */
		ENOUGH_DAYS,

		/** It would fit, but isn't worth calling another day or team, or the way. */
		NOT_WORTH_A_DAY

	}

}
