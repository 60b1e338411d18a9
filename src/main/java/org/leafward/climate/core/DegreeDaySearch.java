package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.List;
import java.util.function.LongToDoubleFunction;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.core.heat.HeatMeasure;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * Looks for the day on which degree-days have added up to a sum. Missing minima and
 * maxima are bridged as {@link Gaps} does; a season with a longer gap, or with more than
 * ten bridged days before the sum is reached, is left out.
 */
public final class DegreeDaySearch {

	/** Takes the noise of binary fractions off a sum. */
	static final double TINY = 1e-6;

	private DegreeDaySearch() {
	}

	/**
	 * The degree-days of each day of a record, by epoch day.
	 * @param record the station's record
	 * @param measure how heat is counted
	 * @param colderBy how much colder the site is than the station, °C
	 * @return in the measure's unit; NaN where a temperature is missing and can't be
	 * bridged
	 */
	public static LongToDoubleFunction daily(DailyRecord record, HeatMeasure measure, double colderBy) {
		return (day) -> {
			double low = Gaps.bridged(record, Element.TMIN, day) / 10 - colderBy;
			double high = Gaps.bridged(record, Element.TMAX, day) / 10 - colderBy;
			double nextLow = measure.method().needsNextLow()
					? Gaps.bridged(record, Element.TMIN, day + 1) / 10 - colderBy : low;
			return measure.degreeDays(low, high, nextLow);
		};
	}

	/**
	 * First day on which the sum is reached, looked for during a year from the goal's
	 * start.
	 * @param record the station's record
	 * @param season the season
	 * @param measure how heat is counted
	 * @param goal the sum, in the measure's unit, and the start
	 * @param colderBy how much colder the site is than the station, °C
	 * @return the date; without when the year doesn't reach the sum
	 */
	public static SeasonOutcome reach(DailyRecord record, Season season, HeatMeasure measure, HeatGoal goal,
			double colderBy) {
		LongToDoubleFunction daily = daily(record, measure, colderBy);
		LocalDate start = goal.startIn(season);
		return walk(record, season, daily, start.toEpochDay(), end(start), goal.sum());
	}

	/**
	 * The sample of a period: its quantiles are the long-term dates of the sum.
	 * @param record the station's record
	 * @param period which seasons
	 * @param hemisphere whose seasons
	 * @param measure how heat is counted
	 * @param goal the sum, in the measure's unit, and the start
	 * @param colderBy how much colder the site is than the station, °C
	 * @return the sample, in days as {@link org.leafward.measure.SeasonDay} counts them
	 */
	public static Sample sample(DailyRecord record, SeasonPeriod period, Hemisphere hemisphere, HeatMeasure measure,
			HeatGoal goal, double colderBy) {
		List<SeasonOutcome> outcomes = period.stream(hemisphere)
			.map((season) -> reach(record, season, measure, goal, colderBy))
			.toList();
		return Sample.ofDates(outcomes);
	}

	/** Last day of the year that begins on a day. */
	static long end(LocalDate start) {
		return start.plusYears(1).toEpochDay() - 1;
	}

	static SeasonOutcome walk(DailyRecord record, Season season, LongToDoubleFunction daily, long from, long to,
			double sum) {
		double total = 0;
		int missing = 0;
		for (long day = from; day <= to; day++) {
			double value = daily.applyAsDouble(day);
			missing += Gaps.temperatureMissing(record, day) ? 1 : 0;
			if (Double.isNaN(value) || missing > SeasonOutcome.MISSING_ALLOWED) {
				return SeasonOutcome.leftOut(season.year(), missing);
			}
			total += value;
			if (total >= sum - TINY) {
				return SeasonOutcome.dated(season.year(), day, missing);
			}
		}
		return SeasonOutcome.without(season.year(), missing);
	}

}
