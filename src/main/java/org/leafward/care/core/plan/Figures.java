package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.leafward.amounts.Amount;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.care.core.rule.RampLight;
import org.leafward.care.core.rule.Rule;
import org.leafward.measure.DayWindow;

/**
 * What is worked out for the plantings of a site. The same question always gets the same
 * answer.
 */
public interface Figures {

	/** Nothing is worked out; the words of the rules stand. */
	Figures NONE = new Figures() {

		@Override
		public Optional<Amount> amount(Rule rule, Subject subject, DayWindow window) {
			return Optional.empty();
		}

		@Override
		public Optional<HardeningRamp> ramp(RampLight light, Subject subject, LocalDate first, int days) {
			return Optional.empty();
		}

	};

	/**
	 * How much.
	 * @param rule a rule that has something worked out
	 * @param subject for which planting
	 * @param window the days of the task
	 * @return empty when the rule's own words have to do
	 */
	Optional<Amount> amount(Rule rule, Subject subject, DayWindow window);

	/**
	 * What the latest soil test of a bed asks for.
	 * @param subject for which planting
	 * @return empty without a test
	 */
	default Optional<TestedSoil> soil(Subject subject) {
		return Optional.empty();
	}

	/**
	 * The way from the light in which a planting stands to that of its place.
	 * @param light what the ramp goes by
	 * @param subject for which planting
	 * @param first the first day outside
	 * @param days how many when none is held
	 * @return empty when the steps of the rule have to do
	 */
	Optional<HardeningRamp> ramp(RampLight light, Subject subject, LocalDate first, int days);

	/**
	 * The days of a ramp that nothing holds.
	 * @param light what the ramp goes by
	 * @param subject for which planting
	 * @param first the first day
	 * @param days how many
	 * @return one for each day; empty when the steps of the rule have to do
	 */
	default List<Amount> steps(RampLight light, Subject subject, LocalDate first, int days) {
		return List.of();
	}

}
