package org.leafward.care.core.rule;

/**
 * When a rule's care falls: a {@link Span} of days, a {@link Ramp}, or single days that
 * the weather picks.
 */
public sealed interface Timing permits Span, Ramp, DayByDay {

	/**
	 * Whether the care happens once per planting, in the season of its planting date,
	 * rather than every season.
	 * @return true when an anchor is the planting date
	 */
	boolean oncePerPlanting();

}
