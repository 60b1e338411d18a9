package org.leafward.care.core.rule;

import java.util.List;

/**
 * What of the weather opens, puts off or withdraws a task. What is not known neither
 * withdraws nor puts off.
 *
 * @param opens all must hold, else the task is not needed that day
 * @param postpones any puts it off by a day
 * @param withdraws any makes it needless while it holds
 */
public record Weather(List<Condition> opens, List<Condition> postpones, List<Condition> withdraws) {

	/** Whatever the weather. */
	public static final Weather ANY = new Weather(List.of(), List.of(), List.of());

	public Weather {
		opens = List.copyOf(opens);
		postpones = List.copyOf(postpones);
		withdraws = List.copyOf(withdraws);
	}

	/**
	 * Whether the weather matters at all.
	 * @return true when there is a condition
	 */
	public boolean matters() {
		return !(this.opens.isEmpty() && this.postpones.isEmpty() && this.withdraws.isEmpty());
	}

}
