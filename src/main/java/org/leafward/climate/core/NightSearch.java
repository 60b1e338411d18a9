package org.leafward.climate.core;

import org.leafward.measure.Season;

/**
 * Looks for nights that have become warm or cool: the mean of the minima of five nights,
 * the last of which belongs to the day itself. A mean of which a night is missing is no
 * mean.
 */
public final class NightSearch {

	/** Nights in the mean. */
	public static final int NIGHTS = 5;

	private NightSearch() {
	}

	/**
	 * First day of spring on which five nights reach the limit. Looked for from midwinter
	 * (1 January in the north, 1 July in the south) to midsummer. It is the first spell,
	 * and colder nights may follow: the date after which it holds for good would often be
	 * that of one cool night in June.
	 * @param record the station's record
	 * @param season the season
	 * @param limit sum of the five minima, tenths of °C
	 * @return the date; without when nights never get that warm
	 */
	public static SeasonOutcome warmTo(DailyRecord record, Season season, int limit) {
		return CrossingSearch.rise(DailyTemperature.MINIMUM.of(record), NIGHTS, limit, season);
	}

	/**
	 * First day from midsummer on on which five nights are down to the limit.
	 * @param record the station's record
	 * @param season the season
	 * @param limit sum of the five minima, tenths of °C
	 * @return the date; without when nights never get that cool
	 */
	public static SeasonOutcome coolTo(DailyRecord record, Season season, int limit) {
		return CrossingSearch.fall(DailyTemperature.MINIMUM.of(record), NIGHTS, limit, season);
	}

}
