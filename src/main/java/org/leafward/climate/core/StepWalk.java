package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.DoubleToIntFunction;
import java.util.function.LongToDoubleFunction;
import java.util.function.LongToIntFunction;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;

/**
 * Walks through a season as the searches do, but for all limits at once: each day has a
 * lowest limit that would end the search there, and a day matters only when its limit is
 * lower than those of all days before it.
 */
final class StepWalk {

	private static final int UNMET = Integer.MAX_VALUE;

	private final LimitSteps.Builder out;

	private final Season season;

	private int[] limits = new int[32];

	private long[] days = new long[32];

	private int size;

	private int missing;

	private StepWalk(LimitSteps.Builder out, Season season) {
		this.out = out;
		this.season = season;
	}

	/** As {@link FreezeSearch}. */
	static void freeze(LimitSteps.Builder out, LongToIntFunction daily, Season season, boolean spring) {
		StepWalk walk = new StepWalk(out, season);
		long from = season.midsummer().toEpochDay() - (spring ? 1 : 0);
		long to = (spring ? season.springSearchStart() : season.fallSearchEnd()).toEpochDay();
		int step = spring ? -1 : 1;
		for (long day = from; day != to + step && walk.told(); day += step) {
			int value = daily.applyAsInt(day);
			if (value == DailyRecord.MISSING) {
				walk.missing++;
			}
			else {
				walk.meet(value, day);
			}
		}
		walk.end();
	}

	/**
	 * As {@link CrossingSearch}.
	 * @param lowest the lowest limit that a sum of the days in the mean meets
	 */
	static void crossing(LimitSteps.Builder out, LongToDoubleFunction series, int days, Season season, boolean rising,
			DoubleToIntFunction lowest) {
		StepWalk walk = new StepWalk(out, season);
		long from = rising ? season.midsummer().minusMonths(7).toEpochDay() : season.midsummer().toEpochDay();
		long to = rising ? season.midsummer().toEpochDay() - 1 : season.fallSearchEnd().toEpochDay();
		double sum = 0;
		int run = 0;
		for (long day = from - days + 1; day <= to && walk.told(); day++) {
			double value = series.applyAsDouble(day);
			if (Double.isNaN(value)) {
				walk.missing++;
				sum = 0;
				run = 0;
				continue;
			}
			sum += value;
			run++;
			if (run > days) {
				sum -= series.applyAsDouble(day - days);
			}
			if (run >= days) {
				walk.meet(lowest.applyAsInt(sum), day);
			}
		}
		walk.end();
	}

	/** As {@link GroundSearch#freeze}. */
	static void groundFreeze(LimitSteps.Builder out, SoilTemperature soil, Season season) {
		StepWalk walk = new StepWalk(out, season);
		long from = season.midsummer().toEpochDay();
		int[] frozen = new int[(int) (season.fallSearchEnd().toEpochDay() - from + 1)];
		for (int at = 0; at < frozen.length && walk.told(); at++) {
			float celsius = soil.celsius(from + at);
			frozen[at] = StepLimits.frozenFrom(celsius);
			walk.missing += Float.isNaN(celsius) ? 1 : 0;
			if (walk.told()) {
				walk.meet(highest(frozen, at), from + at - GroundSearch.DAYS + 1);
			}
		}
		walk.end();
	}

	/**
	 * As {@link GroundSearch#thaw}. A colder site's ground freezes for the last time
	 * later, and from each such day on it thaws the later the colder the site.
	 */
	static void groundThaw(LimitSteps.Builder out, SoilTemperature soil, Season season) {
		StepWalk walk = new StepWalk(out, season);
		long from = season.midsummer().toEpochDay() - 1;
		int[] frozen = new int[(int) (from - season.springSearchStart().toEpochDay() + 1)];
		int[] thawed = new int[frozen.length];
		for (int at = 0; at < frozen.length && walk.told(); at++) {
			float celsius = soil.celsius(from - at);
			frozen[at] = StepLimits.frozenFrom(celsius);
			thawed[at] = StepLimits.thawedUpTo(celsius);
			walk.missing += Float.isNaN(celsius) ? 1 : 0;
			if (walk.told()) {
				walk.meet(highest(frozen, at), at);
			}
		}
		for (int step = walk.size - 1; step >= 0; step--) {
			int limit = walk.limits[step];
			int next = (step > 0) ? walk.limits[step - 1] : UNMET;
			for (int at = (int) walk.days[step]; at >= 0 && limit < next; at--) {
				int upTo = lowest(thawed, at);
				if (upTo >= limit) {
					out.step(limit, walk.seasonDay(from - at));
					limit = upTo + 1;
				}
			}
			if (limit < next) {
				out.stepWithout(limit);
			}
		}
		out.endSeason(!walk.told());
	}

	/** The limit at which all days of the spell are frozen. */
	private static int highest(int[] limits, int last) {
		if (last + 1 < GroundSearch.DAYS) {
			return UNMET;
		}
		int highest = limits[last];
		for (int at = last - GroundSearch.DAYS + 1; at < last; at++) {
			highest = Math.max(highest, limits[at]);
		}
		return highest;
	}

	/** The limit up to which all days of the spell are thawed. */
	private static int lowest(int[] limits, int last) {
		if (last + 1 < GroundSearch.DAYS) {
			return -UNMET;
		}
		int lowest = limits[last];
		for (int at = last - GroundSearch.DAYS + 1; at < last; at++) {
			lowest = Math.min(lowest, limits[at]);
		}
		return lowest;
	}

	private boolean told() {
		return this.missing <= SeasonOutcome.MISSING_ALLOWED;
	}

	private void meet(int limit, long day) {
		if (limit == UNMET || (this.size > 0 && limit >= this.limits[this.size - 1])) {
			return;
		}
		if (this.size == this.limits.length) {
			this.limits = Arrays.copyOf(this.limits, 2 * this.size);
			this.days = Arrays.copyOf(this.days, 2 * this.size);
		}
		this.limits[this.size] = limit;
		this.days[this.size++] = day;
	}

	private void end() {
		for (int step = this.size - 1; step >= 0; step--) {
			this.out.step(this.limits[step], seasonDay(this.days[step]));
		}
		this.out.endSeason(!told());
	}

	private int seasonDay(long epochDay) {
		return SeasonDay.of(LocalDate.ofEpochDay(epochDay), this.season.year());
	}

}
