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

	private static final int NONE = -1;

	private final Course[] courses;

	private HeatSums(Course[] courses) {
		this.courses = courses;
	}

	/**
	 * Makes ready for the walk through the means of the days, which goes as far as sums
	 * are asked for.
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
			.map((season) -> new Course(means, season.year(), from, perDegree, goal.startIn(season)))
			.toArray(Course[]::new));
	}

	/**
	 * The dates on which a sum was reached.
	 * @param sum degree-days in the unit of the base
	 * @return the sample, in days as {@link SeasonDay} counts them
	 */
	synchronized Sample sample(int sum) {
		double[] days = new double[this.courses.length];
		int dated = 0;
		int without = 0;
		for (Course course : this.courses) {
			int at = course.reach(sum);
			if (at != NONE) {
				days[dated++] = course.seasonDay(at);
			}
			else if (!course.broken) {
				without++;
			}
		}
		return new Sample(Arrays.copyOf(days, dated), without, this.courses.length - dated - without);
	}

	/** One season, walked as far as sums were asked for. */
	private static final class Course {

		private static final int FIRST_DAYS = 128;

		private final MeanDays means;

		/** At the station it takes this for the base at the site. */
		private final double base;

		private final double perDegree;

		private final long start;

		private final int days;

		private final int firstSeasonDay;

		/** Where 29 February lies, or beyond the last day. */
		private final int leapDay;

		/** The sum at the end of each day that was walked. */
		private double[] totals = new double[FIRST_DAYS];

		private int walked;

		private double total;

		private int missing;

		private boolean broken;

		Course(MeanDays means, int season, double base, double perDegree, LocalDate start) {
			this.means = means;
			this.base = base;
			this.perDegree = perDegree;
			this.start = start.toEpochDay();
			this.days = (int) (DegreeDaySearch.end(start) - this.start) + 1;
			this.firstSeasonDay = SeasonDay.of(start, season);
			LocalDate leap = start.isLeapYear() ? start : start.plusYears(1);
			long february = leap.isLeapYear() ? leap.withMonth(2).withDayOfMonth(29).toEpochDay() : Long.MAX_VALUE;
			this.leapDay = (february >= this.start && february < this.start + this.days) ? (int) (february - this.start)
					: this.days;
		}

		/** As {@link SeasonDay} counts, without a calendar for each of many thousands. */
		int seasonDay(int at) {
			return this.firstSeasonDay + at - ((at >= this.leapDay) ? 1 : 0);
		}

		/** Which day reaches a sum, from 0; or {@link #NONE}. */
		int reach(int sum) {
			double enough = sum - DegreeDaySearch.TINY;
			while (this.total < enough && !this.broken && this.walked < this.days) {
				walk();
			}
			return (this.total >= enough) ? first(enough) : NONE;
		}

		private void walk() {
			long day = this.start + this.walked;
			double above = this.means.celsius(day) - this.base;
			this.missing += this.means.missing(day) ? 1 : 0;
			if (Double.isNaN(above) || this.missing > SeasonOutcome.MISSING_ALLOWED) {
				this.broken = true;
				return;
			}
			if (this.walked == this.totals.length) {
				this.totals = Arrays.copyOf(this.totals, 2 * this.walked);
			}
			this.total += (above > 0) ? above * this.perDegree : 0;
			this.totals[this.walked++] = this.total;
		}

		private int first(double enough) {
			int low = 0;
			int high = this.walked - 1;
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
