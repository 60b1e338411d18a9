package org.leafward.climate.core;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;

/**
 * The dates of some sums of degree-days that are counted alike, by daily means, found in
 * one walk over the seasons of a period. The same answers as
 * {@link DegreeDaySearch#reach} gives sum by sum. Never changes.
 */
final class HeatSums {

	/** Degrees of Fahrenheit in one of Celsius. */
	private static final double FAHRENHEIT = 1.8;

	private final int[] sums;

	private final Sample[] samples;

	private HeatSums(int[] sums, Sample[] samples) {
		this.sums = sums;
		this.samples = samples;
	}

	/**
	 * Walks through the means of the days, as far as the highest sum.
	 * @param means of the station's record
	 * @param period which seasons
	 * @param hemisphere whose seasons
	 * @param base above which the mean counts, in its own unit
	 * @param start first day that counts, as {@link HeatGoal#start}
	 * @param colderBy how much colder the site is than the station, °C
	 * @param sums degree-days in the unit of the base, from the lowest to the highest;
	 * must not be changed any more
	 * @return the dates
	 */
	static HeatSums of(MeanDays means, SeasonPeriod period, Hemisphere hemisphere, TemperatureThreshold base,
			MonthDay start, double colderBy, int[] sums) {
		// Above this at the station it is warmer than the base at the site.
		double from = base.celsius() + colderBy;
		double perDegree = base.fahrenheit() ? FAHRENHEIT : 1;
		HeatGoal goal = new HeatGoal(sums[0], start);
		Walk walk = new Walk(sums, period.seasons());
		period.stream(hemisphere)
			.forEach((season) -> walk.season(means, season, goal.startIn(season), from, perDegree));
		return new HeatSums(sums, walk.samples());
	}

	/**
	 * The dates on which a sum was reached.
	 * @param sum degree-days in the unit of the base
	 * @return the sample, in days as {@link SeasonDay} counts them; null for a sum that
	 * was not looked for
	 */
	@Nullable Sample sample(int sum) {
		int place = Arrays.binarySearch(this.sums, sum);
		return (place >= 0) ? this.samples[place] : null;
	}

	/** Collects the dates of all sums. */
	private static final class Walk {

		private final int[] sums;

		private final int seasons;

		/** By sum, of the seasons that reached it. */
		private final double[][] days;

		private final int[] dated;

		private final int[] leftOut;

		Walk(int[] sums, int seasons) {
			this.sums = sums;
			this.seasons = seasons;
			this.days = new double[sums.length][seasons];
			this.dated = new int[sums.length];
			this.leftOut = new int[sums.length];
		}

		void season(MeanDays means, Season season, LocalDate start, double base, double perDegree) {
			long from = start.toEpochDay();
			long to = DegreeDaySearch.end(start);
			double total = 0;
			int missing = 0;
			long nextMissing = means.nextMissing(from);
			int firstSeasonDay = SeasonDay.of(start, season.year());
			long leapDay = leapDay(start);
			int next = 0;
			for (long day = from; day <= to && next < this.sums.length; day++) {
				double above = means.celsius(day) - base;
				if (day == nextMissing) {
					missing++;
					nextMissing = means.nextMissing(day + 1);
				}
				if (Double.isNaN(above) || missing > SeasonOutcome.MISSING_ALLOWED) {
					for (int rest = next; rest < this.sums.length; rest++) {
						this.leftOut[rest]++;
					}
					return;
				}
				total += (above > 0) ? above * perDegree : 0;
				if (total >= this.sums[next] - DegreeDaySearch.TINY) {
					// As SeasonDay counts, without a calendar for each of many thousands.
					next = reached(total, next, firstSeasonDay + (int) (day - from) - ((day >= leapDay) ? 1 : 0));
				}
			}
		}

		/** The next 29 February within a year, days since 1970-01-01, or never. */
		private static long leapDay(LocalDate start) {
			LocalDate year = start.isLeapYear() ? start : start.plusYears(1);
			long day = year.isLeapYear() ? year.withMonth(2).withDayOfMonth(29).toEpochDay() : Long.MAX_VALUE;
			return (day >= start.toEpochDay()) ? day : Long.MAX_VALUE;
		}

		private int reached(double total, int first, int seasonDay) {
			int next = first;
			while (next < this.sums.length && total >= this.sums[next] - DegreeDaySearch.TINY) {
				this.days[next][this.dated[next]++] = seasonDay;
				next++;
			}
			return next;
		}

		Sample[] samples() {
			Sample[] samples = new Sample[this.sums.length];
			for (int number = 0; number < samples.length; number++) {
				int with = this.dated[number];
				samples[number] = new Sample(Arrays.copyOf(this.days[number], with),
						this.seasons - with - this.leftOut[number], this.leftOut[number]);
			}
			return samples;
		}

	}

}
