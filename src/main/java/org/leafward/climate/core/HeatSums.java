package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.SeasonDay;

/**
 * The running sums of degree-days of every season of a period, by daily means, so that
 * any number of sums that are counted alike is looked up in one walk over the record.
 * Answers as {@link DegreeDaySearch#reach} does sum by sum. Never changes.
 */
final class HeatSums {

	/** Any goal: only its start counts for the walk. */
	private static final int ANY_SUM = 1;

	/** Degrees of Fahrenheit in one of Celsius. */
	private static final double FAHRENHEIT = 1.8;

	private final Course[] courses;

	private HeatSums(Course[] courses) {
		this.courses = courses;
	}

	/**
	 * Walks through the means of the days.
	 * @param means of the station's record
	 * @param period which seasons
	 * @param hemisphere whose seasons
	 * @param base above which the mean counts, in its own unit
	 * @param start first day that counts, as {@link HeatGoal#start}
	 * @param colderBy how much colder the site is than the station, °C
	 * @return the sums
	 */
	static HeatSums of(MeanDays means, SeasonPeriod period, Hemisphere hemisphere, TemperatureThreshold base,
			MonthDay start, double colderBy) {
		// Above this at the station it is warmer than the base at the site.
		double from = base.celsius() + colderBy;
		double perDegree = base.fahrenheit() ? FAHRENHEIT : 1;
		HeatGoal goal = new HeatGoal(ANY_SUM, start);
		return new HeatSums(period.stream(hemisphere)
			.map((season) -> Course.of(means, season.year(), from, perDegree, goal.startIn(season)))
			.toArray(Course[]::new));
	}

	/**
	 * The dates on which a sum was reached.
	 * @param sum degree-days in the unit of the base
	 * @return the sample, in days as {@link SeasonDay} counts them
	 */
	Sample sample(int sum) {
		double[] days = new double[this.courses.length];
		int dated = 0;
		int without = 0;
		for (Course course : this.courses) {
			int at = course.reach(sum);
			if (at < course.totals.length) {
				days[dated++] = SeasonDay.of(LocalDate.ofEpochDay(course.start + at), course.season);
			}
			else if (course.told) {
				without++;
			}
		}
		return new Sample(Arrays.copyOf(days, dated), without, this.courses.length - dated - without);
	}

	/**
	 * One season.
	 *
	 * @param season its year
	 * @param start the first day that counts, days since 1970-01-01
	 * @param totals the sum at the end of each day that can be told
	 * @param told whether the whole year can be told
	 */
	private record Course(int season, long start, double[] totals, boolean told) {

		static Course of(MeanDays means, int season, double base, double perDegree, LocalDate start) {
			long from = start.toEpochDay();
			double[] totals = new double[(int) (DegreeDaySearch.end(start) - from) + 1];
			double total = 0;
			int missing = 0;
			for (int at = 0; at < totals.length; at++) {
				double above = means.celsius(from + at) - base;
				missing += means.missing(from + at) ? 1 : 0;
				if (Double.isNaN(above) || missing > SeasonOutcome.MISSING_ALLOWED) {
					return new Course(season, from, Arrays.copyOf(totals, at), false);
				}
				total += (above > 0) ? above * perDegree : 0;
				totals[at] = total;
			}
			return new Course(season, from, totals, true);
		}

		/** Which day reaches the sum, from 0; the number of days told when none does. */
		int reach(int sum) {
			double enough = sum - DegreeDaySearch.TINY;
			int low = 0;
			int high = this.totals.length;
			while (low < high) {
				int middle = (low + high) >>> 1;
				if (this.totals[middle] >= enough) {
					high = middle;
				}
				else {
					low = middle + 1;
				}
			}
			return low;
		}

	}

}
