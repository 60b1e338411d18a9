package org.leafward.workdays.core.words;

import java.time.LocalDate;
import org.leafward.measure.DayWords;

/** Sentences about days. */
public final class DayText {

	private DayText() {
	}

	/**
	 * What became of a day.
	 * @param from the day before
	 * @param to the day now
	 * @return a sentence
	 */
	public static String moved(LocalDate from, LocalDate to) {
		return from.equals(to) ? "Time or meeting point of the workday on %s changed.".formatted(DayWords.of(from))
				: "The workday of %s is moved to %s.".formatted(DayWords.of(from), DayWords.of(to));
	}

}
