package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.OptionalInt;
import java.util.function.LongToIntFunction;
import org.leafward.measure.Season;

/**
 * Looks for the last freeze of spring and the first of fall. Both walks begin at
 * midsummer and go outward until the first day at or below the limit, so days missing in
 * deep winter don't matter.
 */
public final class FreezeSearch {

	private FreezeSearch() {
	}

	/**
	 * Last day before midsummer with a minimum at or below the limit.
	 * @param record the station's record
	 * @param season the season
	 * @param limit tenths of °C
	 * @return the date, or none seen, or left out for missing days
	 */
	public static SeasonOutcome lastSpring(DailyRecord record, Season season, int limit) {
		return lastSpring(minimum(record), season, limit);
	}

	/**
	 * First day from midsummer on with a minimum at or below the limit.
	 * @param record the station's record
	 * @param season the season
	 * @param limit tenths of °C
	 * @return the date, or none seen, or left out for missing days
	 */
	public static SeasonOutcome firstFall(DailyRecord record, Season season, int limit) {
		return walk(minimum(record), season, limit, season.midsummer().toEpochDay(),
				season.fallSearchEnd().toEpochDay(), 1);
	}

	/**
	 * As {@link #lastSpring(DailyRecord, Season, int)} for a spring that may not be over:
	 * days after the last one that is known are not missing, they are still to come.
	 * @param record the station's record
	 * @param season the season
	 * @param limit tenths of °C
	 * @param last last day that counts
	 * @return the date, or none seen so far, or left out for missing days
	 */
	public static SeasonOutcome lastSpring(DailyRecord record, Season season, int limit, LocalDate last) {
		long from = Math.min(season.midsummer().toEpochDay() - 1, last.toEpochDay());
		long to = season.springSearchStart().toEpochDay();
		return (from < to) ? SeasonOutcome.without(season.year(), 0)
				: walk(minimum(record), season, limit, from, to, -1);
	}

	/**
	 * As {@link #firstFall(DailyRecord, Season, int)} for a fall that may not be over.
	 * @param record the station's record
	 * @param season the season
	 * @param limit tenths of °C
	 * @param last last day that counts
	 * @return the date, or none seen so far, or left out for missing days
	 */
	public static SeasonOutcome firstFall(DailyRecord record, Season season, int limit, LocalDate last) {
		long from = season.midsummer().toEpochDay();
		long to = Math.min(season.fallSearchEnd().toEpochDay(), last.toEpochDay());
		return (to < from) ? SeasonOutcome.without(season.year(), 0)
				: walk(minimum(record), season, limit, from, to, 1);
	}

	static SeasonOutcome lastSpring(LongToIntFunction daily, Season season, int limit) {
		return walk(daily, season, limit, season.midsummer().toEpochDay() - 1, season.springSearchStart().toEpochDay(),
				-1);
	}

	/** The minimum of each day. */
	static LongToIntFunction minimum(DailyRecord record) {
		return (day) -> record.value(Element.TMIN, day);
	}

	private static SeasonOutcome walk(LongToIntFunction daily, Season season, int limit, long from, long to, int step) {
		int missing = 0;
		for (long day = from; day != to + step; day += step) {
			int value = daily.applyAsInt(day);
			if (value == DailyRecord.MISSING) {
				missing++;
				if (missing > SeasonOutcome.MISSING_ALLOWED) {
					return SeasonOutcome.leftOut(season.year(), missing);
				}
			}
			else if (value <= limit) {
				return SeasonOutcome.dated(season.year(), day, missing);
			}
		}
		return SeasonOutcome.without(season.year(), missing);
	}

	/**
	 * Days strictly between the last spring and the first fall freeze, on the real
	 * calendar.
	 * @param spring outcome of the spring
	 * @param fall outcome of the fall of the same season
	 * @return empty unless both have a date
	 */
	public static OptionalInt frostFreeDays(SeasonOutcome spring, SeasonOutcome fall) {
		if (spring.date() == null || fall.date() == null) {
			return OptionalInt.empty();
		}
		return OptionalInt.of((int) ChronoUnit.DAYS.between(spring.date(), fall.date()) - 1);
	}

}
