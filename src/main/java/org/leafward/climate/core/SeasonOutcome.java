package org.leafward.climate.core;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What the record says about an event in one season.
 *
 * @param season year of the season
 * @param state whether there is a date
 * @param date the date, where there is one
 * @param missing days without a value that were met on the way
 */
public record SeasonOutcome(int season, State state, @Nullable LocalDate date, int missing) {

	/**
	 * Missing days that are put up with on the way to a date. The Utah Climate Center
	 * calls a season invalid when ten missing days come before the freeze is reached (its
	 * help page on freeze tables, known here from a summary only); here the eleventh one
	 * makes the season invalid.
	 */
	public static final int MISSING_ALLOWED = 10;

	/** The three possible answers. */
	public enum State {

		/** The event came on the date. */
		DATED,

		/** The season was seen and the event didn't come. */
		WITHOUT,

		/** Too many days are missing to tell. */
		LEFT_OUT

	}

	static SeasonOutcome dated(int season, long epochDay, int missing) {
		return new SeasonOutcome(season, State.DATED, LocalDate.ofEpochDay(epochDay), missing);
	}

	static SeasonOutcome without(int season, int missing) {
		return new SeasonOutcome(season, State.WITHOUT, null, missing);
	}

	static SeasonOutcome leftOut(int season, int missing) {
		return new SeasonOutcome(season, State.LEFT_OUT, null, missing);
	}

}
