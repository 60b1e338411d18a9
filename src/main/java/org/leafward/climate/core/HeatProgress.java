package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.List;

/**
 * Where a sum of degree-days stands on the way through a season. Not for use by several
 * threads.
 */
final class HeatProgress {

	private static final int EARLY = 10;

	private static final int MIDDLE = 50;

	private static final int LATE = 90;

	/** Takes the noise of binary fractions off a sum. */
	private static final double TINY = 1e-6;

	private final long start;

	private final double sum;

	private long day;

	private double observed;

	private int observedDays;

	private double forecast;

	private int forecastDays;

	private double latest = Double.NaN;

	HeatProgress(LocalDate start, double sum) {
		this.start = start.toEpochDay();
		this.day = this.start;
		this.sum = sum;
	}

	boolean done() {
		return this.observed + this.forecast >= this.sum - TINY;
	}

	void observe(double value) {
		this.observed += value;
		this.observedDays++;
		this.latest = value;
		this.day++;
	}

	void foresee(List<Foreseen> days) {
		for (Foreseen next : days) {
			long hole = next.day() - this.day;
			if (hole > Gaps.LONGEST) {
				return;
			}
			while (this.day < next.day() && !done()) {
				add(Double.isNaN(this.latest) ? next.value() : (this.latest + next.value()) / 2);
			}
			if (this.day == next.day() && !done()) {
				add(next.value());
				this.latest = next.value();
			}
		}
	}

	private void add(double value) {
		this.forecast += value;
		this.forecastDays++;
		this.day++;
	}

	SeasonProjection certain() {
		LocalDate date = LocalDate.ofEpochDay(this.day - 1);
		return new SeasonProjection(
				(this.forecastDays == 0) ? SeasonProjection.Reached.OBSERVED : SeasonProjection.Reached.FORECAST,
				this.observed, this.observedDays, this.forecast, this.forecastDays, date, date, date, 0, null);
	}

	SeasonProjection normal(Sample past) {
		String undefined = past.undefined().orElse(null);
		return new SeasonProjection(SeasonProjection.Reached.NORMAL, this.observed, this.observedDays, this.forecast,
				this.forecastDays, (undefined != null) ? null : date(past, EARLY),
				(undefined != null) ? null : date(past, MIDDLE), (undefined != null) ? null : date(past, LATE),
				past.used(), undefined);
	}

	private static LocalDate date(Sample past, int percent) {
		return LocalDate.ofEpochDay((long) Math.floor(past.quantile(percent) + 0.5));
	}

	/**
	 * The days since the start that have been counted.
	 * @return 0 or more
	 */
	long daysCounted() {
		return this.day - this.start;
	}

	/**
	 * The next day to count.
	 * @return days since 1970-01-01
	 */
	long nextDay() {
		return this.day;
	}

	/**
	 * What is left of the sum.
	 * @return degree-days
	 */
	double rest() {
		return this.sum - this.observed - this.forecast;
	}

	/** The degree-days of a day of a forecast. */
	record Foreseen(long day, double value) {
	}

}
