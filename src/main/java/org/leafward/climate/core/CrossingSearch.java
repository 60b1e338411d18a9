package org.leafward.climate.core;

import java.util.function.LongToDoubleFunction;
import org.leafward.measure.Season;

/**
 * Looks for the day on which the mean of several days in a row, the last of which is the
 * day itself, has risen or fallen to a limit. A mean of which a day is missing is no
 * mean.
 * <p>
 * It is the first spell, and days on the other side of the limit may follow: the date
 * after which it holds for good would often be that of one odd day much later. Where the
 * mean is beyond the limit from the start, the date is the first day looked at.
 */
public final class CrossingSearch {

	/** Takes the noise of binary fractions off a sum. */
	private static final double TINY = 1e-6;

	private CrossingSearch() {
	}

	/**
	 * First day from midwinter (1 January in the north, 1 July in the south) to midsummer
	 * on which the mean reaches the limit.
	 * @param series a value for each epoch day, NaN where it is missing
	 * @param days days in the mean, 1 to 60
	 * @param limit the mean times the days, in the unit of the series
	 * @param season the season
	 * @return the date; without when it doesn't get there; left out when more than ten
	 * days are missing on the way
	 */
	public static SeasonOutcome rise(LongToDoubleFunction series, int days, double limit, Season season) {
		return walk(series, days, limit, season, season.midsummer().minusMonths(7).toEpochDay(),
				season.midsummer().toEpochDay() - 1, true);
	}

	/**
	 * First day from midsummer to the next one on which the mean is down to the limit.
	 * @param series a value for each epoch day, NaN where it is missing
	 * @param days days in the mean, 1 to 60
	 * @param limit the mean times the days, in the unit of the series
	 * @param season the season
	 * @return as {@link #rise}
	 */
	public static SeasonOutcome fall(LongToDoubleFunction series, int days, double limit, Season season) {
		return walk(series, days, limit, season, season.midsummer().toEpochDay(), season.fallSearchEnd().toEpochDay(),
				false);
	}

	private static SeasonOutcome walk(LongToDoubleFunction series, int days, double limit, Season season, long from,
			long to, boolean rising) {
		if (days < 1 || days > 60) {
			throw new IllegalArgumentException("a mean of %d days is outside 1 to 60".formatted(days));
		}
		int missing = 0;
		double sum = 0;
		int run = 0;
		for (long day = from - days + 1; day <= to; day++) {
			double value = series.applyAsDouble(day);
			if (Double.isNaN(value)) {
				missing++;
				if (missing > SeasonOutcome.MISSING_ALLOWED) {
					return SeasonOutcome.leftOut(season.year(), missing);
				}
				sum = 0;
				run = 0;
				continue;
			}
			sum += value;
			run++;
			if (run > days) {
				sum -= series.applyAsDouble(day - days);
			}
			if (run >= days && meets(sum, limit, rising)) {
				return SeasonOutcome.dated(season.year(), day, missing);
			}
		}
		return SeasonOutcome.without(season.year(), missing);
	}

	static boolean meets(double sum, double limit, boolean rising) {
		return rising ? sum >= limit - TINY : sum <= limit + TINY;
	}

}
