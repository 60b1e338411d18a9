package org.leafward.care.core.plan;

import java.util.Optional;
import org.leafward.amounts.Amount;
import org.leafward.care.core.rule.Computes;
import org.leafward.measure.DayWindow;

/**
 * What is worked out for the plantings of a site. The same question always gets the same
 * answer.
 */
@FunctionalInterface
public interface Figures {

	/** Nothing is worked out; the words of the rules stand. */
	Figures NONE = (computes, subject, window) -> Optional.empty();

	/**
	 * How much.
	 * @param computes of what
	 * @param subject for which planting
	 * @param window the days of the task
	 * @return empty when the rule's own words have to do
	 */
	Optional<Amount> amount(Computes computes, Subject subject, DayWindow window);

}
