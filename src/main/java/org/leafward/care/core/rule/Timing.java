package org.leafward.care.core.rule;

/** When a rule's care falls: a {@link Span} of days or a {@link Ramp}. */
public sealed interface Timing permits Span, Ramp {

	/**
	 * Whether the care happens once per planting, in the season of its planting date,
	 * rather than every season.
	 * @return true when an anchor is the planting date
	 */
	boolean oncePerPlanting();

}
