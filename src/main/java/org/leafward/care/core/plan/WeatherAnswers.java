package org.leafward.care.core.plan;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Condition;
import org.leafward.measure.Explanation;

/** What the weather of a site is like. The same question always gets the same answer. */
@FunctionalInterface
public interface WeatherAnswers {

	/** Nothing is known of the weather. */
	WeatherAnswers UNKNOWN = (condition, day) -> new Answer(null,
			Explanation.of("Weather (%s)".formatted(condition.state()), "not known"));

	/**
	 * Asks about a day.
	 * @param condition the state asked about
	 * @param day today, or a day that the forecast may reach
	 * @return the answer
	 */
	Answer ask(Condition condition, LocalDate day);

	/**
	 * An answer.
	 *
	 * @param holds whether the state holds; null when that is not known, which is never
	 * taken for a no
	 * @param explanation the figures that led to it
	 */
	record Answer(@Nullable Boolean holds, Explanation explanation) {

		boolean yes() {
			return Boolean.TRUE.equals(this.holds);
		}

		boolean no() {
			return Boolean.FALSE.equals(this.holds);
		}

		/** The answer as a sentence. */
		String sentence() {
			return "%s: %s.".formatted(this.explanation.label(), this.explanation.value().replaceFirst("\\.$", ""));
		}

	}

}
