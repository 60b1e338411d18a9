package org.leafward.climate.core;

import org.leafward.measure.Season;

/** Looks for the days on which the ground at 10 cm freezes and thaws. */
public final class GroundSearch {

	/** At or below this the ground counts as frozen, °C. */
	public static final double FROZEN = 0;

	/** Above this it counts as thawed, °C (34 °F). */
	public static final double THAWED = 1.1;

	/** Days that a state must last. */
	public static final int DAYS = 5;

	private GroundSearch() {
	}

	/**
	 * First of five days in a row with frozen ground, from midsummer on.
	 * @param soil the station's soil
	 * @param season the season
	 * @param shift what the site is colder than the station, °C
	 * @return the date; without when the ground doesn't freeze
	 */
	public static SeasonOutcome freeze(SoilTemperature soil, Season season, double shift) {
		int missing = 0;
		int run = 0;
		long end = season.fallSearchEnd().toEpochDay();
		for (long day = season.midsummer().toEpochDay(); day <= end; day++) {
			float celsius = soil.celsius(day);
			if (Float.isNaN(celsius) && ++missing > SeasonOutcome.MISSING_ALLOWED) {
				return SeasonOutcome.leftOut(season.year(), missing);
			}
			run = (celsius - shift <= FROZEN) ? run + 1 : 0;
			if (run == DAYS) {
				return SeasonOutcome.dated(season.year(), day - DAYS + 1, missing);
			}
		}
		return SeasonOutcome.without(season.year(), missing);
	}

	/**
	 * First of five days in a row with thawed ground, after the last five days or more of
	 * frozen ground before midsummer.
	 * @param soil the station's soil
	 * @param season the season
	 * @param shift what the site is colder than the station, °C
	 * @return the date; without when the ground didn't freeze, or stays frozen up to
	 * midsummer
	 */
	public static SeasonOutcome thaw(SoilTemperature soil, Season season, double shift) {
		int missing = 0;
		int frozen = 0;
		int thawed = 0;
		long thawBegin = Long.MIN_VALUE;
		long start = season.springSearchStart().toEpochDay();
		for (long day = season.midsummer().toEpochDay() - 1; day >= start; day--) {
			float celsius = soil.celsius(day);
			if (Float.isNaN(celsius) && ++missing > SeasonOutcome.MISSING_ALLOWED) {
				return SeasonOutcome.leftOut(season.year(), missing);
			}
			// Walking back: the earliest thaw seen so far is the first one after what
			// lies before.
			thawed = (celsius - shift > THAWED) ? thawed + 1 : 0;
			if (thawed >= DAYS) {
				thawBegin = day;
			}
			frozen = (celsius - shift <= FROZEN) ? frozen + 1 : 0;
			if (frozen == DAYS) {
				return (thawBegin != Long.MIN_VALUE) ? SeasonOutcome.dated(season.year(), thawBegin, missing)
						: SeasonOutcome.without(season.year(), missing);
			}
		}
		return SeasonOutcome.without(season.year(), missing);
	}

}
