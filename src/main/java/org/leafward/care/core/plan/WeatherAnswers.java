package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.Locale;
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
	 * Asks as of a day, ahead as far as a forecast is trusted.
	 * @param condition the state asked about
	 * @param day today
	 * @return the answer
	 */
	Answer ask(Condition condition, LocalDate day);

	/**
	 * Asks about a single day.
	 * @param condition the state asked about
	 * @param day today, or a day that the forecast may reach
	 * @return the answer
	 */
	default Answer on(Condition condition, LocalDate day) {
		return ask(condition, day);
	}

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
			String label = this.explanation.label();
			return "%s%s: %s.".formatted(label.substring(0, 1).toUpperCase(Locale.ROOT), label.substring(1),
					this.explanation.value().replaceFirst("\\.$", ""));
		}

	}

}
