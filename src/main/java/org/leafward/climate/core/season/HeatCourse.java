package org.leafward.climate.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.LongToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.HeatSoFar;
import org.leafward.climate.TemperatureShift;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.DegreeDaySearch;
import org.leafward.climate.core.Gaps;
import org.leafward.climate.core.Quantiles;
import org.leafward.climate.core.Sample;
import org.leafward.climate.core.SeasonOutcome;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.SeasonProjection;
import org.leafward.climate.core.heat.HeatMeasure;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;

/**
 * Lays this season's sum of degree-days beside those of past years, day by day from the
 * usual start, 1 March (in the south 1 September), for ten months. Past years are aligned
 * by days since the start; those that {@link DegreeDaySearch} would leave out for missing
 * days are left out here. Simple averages.
 */
public final class HeatCourse {

	/** Months that are shown. */
	public static final int MONTHS = 10;

	/** Below so many degree-days in a fortnight a day more or less says nothing. */
	private static final double FLAT = 30;

	private static final int FORTNIGHT = 14;

	private final DailyRecord record;

	private final Season season;

	private final HeatMeasure measure;

	private final double colderBy;

	private final LongToDoubleFunction daily;

	private final LocalDate start;

	private final int length;

	private final List<double[]> past = new ArrayList<>();

	private HeatCourse(DailyRecord record, Season season, TemperatureThreshold base, double colderBy) {
		this.record = record;
		this.season = season;
		this.measure = HeatMeasure.average(base.degrees(), base.fahrenheit());
		this.colderBy = colderBy;
		this.daily = DegreeDaySearch.daily(record, this.measure, colderBy);
		this.start = HeatGoal.of(1).startIn(season);
		this.length = (int) ChronoUnit.DAYS.between(this.start, this.start.plusMonths(MONTHS));
	}

	/**
	 * The course of a season.
	 * @param record the station's record
	 * @param normals the past seasons; the season itself is passed over
	 * @param shift how the place differs from the station
	 * @param season the season
	 * @param base the temperature above which heat counts, in its own unit
	 * @param forecast days of a forecast, none missing between them
	 * @param goals sums whose dates are wanted, 1 to 20,000 each
	 * @return what is known; what isn't is said in words
	 */
	public static HeatSoFar of(DailyRecord record, SeasonPeriod normals, TemperatureShift shift, Season season,
			TemperatureThreshold base, List<SeasonProjection.ForecastDay> forecast, List<Integer> goals) {
		HeatCourse course = new HeatCourse(record, season, base, shift.mean());
		course.walkPast(normals);
		return course.result(base, normals, forecast, goals);
	}

	/**
	 * The sum by a day alone.
	 * @param record the station's record
	 * @param shift how the place differs from the station
	 * @param season the season
	 * @param base the temperature above which heat counts, in its own unit
	 * @param last last day that counts
	 * @return empty when a day before it is not known
	 */
	public static OptionalDouble sumBy(DailyRecord record, TemperatureShift shift, Season season,
			TemperatureThreshold base, LocalDate last) {
		HeatCourse course = new HeatCourse(record, season, base, shift.mean());
		if (Observed.last(record).filter((day) -> !day.isBefore(last)).isEmpty()) {
			return OptionalDouble.empty();
		}
		double sum = 0;
		for (LocalDate day = course.start; !day.isAfter(last); day = day.plusDays(1)) {
			sum += course.daily.applyAsDouble(day.toEpochDay());
		}
		return Double.isNaN(sum) ? OptionalDouble.empty() : OptionalDouble.of(sum);
	}

	private void walkPast(SeasonPeriod normals) {
		for (int year = normals.from(); year <= normals.to(); year++) {
			if (year != this.season.year()) {
				sums(HeatGoal.of(1).startIn(new Season(year, this.season.hemisphere()))).ifPresent(this.past::add);
			}
		}
	}

	private Optional<double[]> sums(LocalDate from) {
		double[] sums = new double[this.length];
		double sum = 0;
		int missing = 0;
		for (int i = 0; i < this.length; i++) {
			long day = from.toEpochDay() + i;
			missing += Gaps.temperatureMissing(this.record, day) ? 1 : 0;
			double value = this.daily.applyAsDouble(day);
			if (Double.isNaN(value) || missing > SeasonOutcome.MISSING_ALLOWED) {
				return Optional.empty();
			}
			sum += value;
			sums[i] = sum;
		}
		return Optional.of(sums);
	}

	private HeatSoFar result(TemperatureThreshold base, SeasonPeriod normals,
			List<SeasonProjection.ForecastDay> forecast, List<Integer> goals) {
		boolean known = this.past.size() >= Sample.FEWEST_SEASONS;
		List<HeatSoFar.Normal> normal = new ArrayList<>();
		for (int i = 0; known && i < this.length; i++) {
			int at = i;
			double[] sorted = sorted((sums) -> sums[at]);
			normal.add(new HeatSoFar.Normal(this.start.plusDays(i), Quantiles.type7(sorted, 0.1),
					Quantiles.type7(sorted, 0.5), Quantiles.type7(sorted, 0.9)));
		}
		long last = Observed.last(this.record).map(LocalDate::toEpochDay).orElse(Long.MIN_VALUE);
		List<HeatSoFar.Sum> observed = new ArrayList<>();
		int bridged = 0;
		double sum = 0;
		LocalDate gap = null;
		for (int i = 0; i < this.length && this.start.toEpochDay() + i <= last && gap == null; i++) {
			LocalDate day = this.start.plusDays(i);
			double value = this.daily.applyAsDouble(day.toEpochDay());
			if (Double.isNaN(value)) {
				gap = day;
			}
			else {
				sum += value;
				bridged += Gaps.temperatureMissing(this.record, day.toEpochDay()) ? 1 : 0;
				observed.add(new HeatSoFar.Sum(day, sum));
			}
		}
		// No sum is as high as this one, so it tells all that is observed and forecast.
		Optional<SeasonProjection> all = (gap != null) ? Optional.empty() : project(20_000, forecast, normals);
		return new HeatSoFar(base, this.start, observed, normal, all.map(this::goesOn).orElse(List.of()),
				all.map(SeasonProjection::forecastDays).orElse(0),
				goals.stream().map((goal) -> goal(goal, forecast, normals)).toList(), this.past.size(), bridged,
				ahead(observed, normal), missing(gap, known));
	}

	private Optional<SeasonProjection> project(int goal, List<SeasonProjection.ForecastDay> forecast,
			SeasonPeriod normals) {
		return SeasonProjection.of(this.record, forecast, this.season, this.measure, HeatGoal.of(goal), this.colderBy,
				normals);
	}

	private List<HeatSoFar.Sum> goesOn(SeasonProjection all) {
		int counted = all.observedDays() + all.forecastDays();
		if (this.past.size() < Sample.FEWEST_SEASONS || counted >= this.length) {
			return List.of();
		}
		List<HeatSoFar.Sum> sums = new ArrayList<>();
		if (all.observedDays() > 0) {
			sums.add(new HeatSoFar.Sum(this.start.plusDays(all.observedDays() - 1), all.observed()));
		}
		double until = all.observed() + all.forecast();
		if (all.forecastDays() > 0) {
			sums.add(new HeatSoFar.Sum(this.start.plusDays(counted - 1), until));
		}
		for (int i = counted; i < this.length; i++) {
			int at = i;
			double[] rest = sorted((past) -> past[at] - ((counted > 0) ? past[counted - 1] : 0));
			sums.add(new HeatSoFar.Sum(this.start.plusDays(i), until + Quantiles.type7(rest, 0.5)));
		}
		return sums;
	}

	private double[] sorted(ToDoubleFunction<double[]> value) {
		double[] values = this.past.stream().mapToDouble(value).toArray();
		Arrays.sort(values);
		return values;
	}

	private HeatSoFar.Goal goal(int sum, List<SeasonProjection.ForecastDay> forecast, SeasonPeriod normals) {
		Sample sample = DegreeDaySearch.sample(this.record, normals, this.season.hemisphere(), this.measure,
				HeatGoal.of(sum), this.colderBy);
		LocalDate usual = sample.undefined().isPresent() ? null
				: SeasonDay.toDate(sample.quantile(50), this.season.year());
		return project(sum, forecast, normals)
			.map((found) -> new HeatSoFar.Goal(sum, usual, found.middle(), found.early(), found.late(), basis(found)))
			.orElse(new HeatSoFar.Goal(sum, usual, null, null, null, HeatSoFar.Basis.UNKNOWN));
	}

	private static HeatSoFar.Basis basis(SeasonProjection found) {
		if (found.middle() == null) {
			return HeatSoFar.Basis.UNKNOWN;
		}
		return switch (found.reached()) {
			case OBSERVED -> HeatSoFar.Basis.OBSERVED;
			case FORECAST -> HeatSoFar.Basis.FORECAST;
			case NORMAL -> HeatSoFar.Basis.NORMAL;
		};
	}

	private static @Nullable Integer ahead(List<HeatSoFar.Sum> observed, List<HeatSoFar.Normal> normal) {
		int at = observed.size() - 1;
		if (at < 0 || normal.isEmpty() || observed.get(at).sum() <= 0) {
			return null;
		}
		double sum = observed.get(at).sum();
		int same = 0;
		while (same < normal.size() && normal.get(same).middle() < sum) {
			same++;
		}
		int before = Math.max(0, same - FORTNIGHT / 2);
		int after = Math.min(normal.size() - 1, same + FORTNIGHT / 2);
		boolean flat = normal.get(after).middle() - normal.get(before).middle() < FLAT;
		return (same == normal.size() || flat) ? null : same - at;
	}

	private static @Nullable String missing(@Nullable LocalDate gap, boolean known) {
		if (!known) {
			return "Fewer than %d past years are complete enough to say what is normal."
				.formatted(Sample.FEWEST_SEASONS);
		}
		return (gap != null) ? "The sum is not known from %s on: more than %d days in a row have no temperature."
			.formatted(gap, Gaps.LONGEST) : null;
	}

}
