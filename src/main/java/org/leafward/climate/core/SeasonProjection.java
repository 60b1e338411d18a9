package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.core.heat.HeatMeasure;
import org.leafward.measure.Season;

/**
 * When a sum of degree-days will be reached this season: observed days first, then the
 * days of a forecast, then what was left to do as each past year would have done it. The
 * past years give as many dates, whose quantiles are the answer. The method is common
 * practice; leap years are aligned by days since the start.
 *
 * @param reached on which days the sum is reached
 * @param observed degree-days of the observed days up to the sum
 * @param observedDays how many observed days
 * @param forecast degree-days of the forecast days up to the sum
 * @param forecastDays how many forecast days
 * @param early the date that one past year in ten undercuts; null when undefined
 * @param middle the median date; null when undefined
 * @param late the date that one past year in ten exceeds; null when undefined
 * @param years past years that reach the sum
 * @param undefined why the past years give no date, or null
 */
public record SeasonProjection(Reached reached, double observed, int observedDays, double forecast, int forecastDays,
		@Nullable LocalDate early, @Nullable LocalDate middle, @Nullable LocalDate late, int years,
		@Nullable String undefined) {

	/** What the date rests on. */
	public enum Reached {

		/** The sum has been observed. */
		OBSERVED,

		/** The sum is reached inside the forecast. */
		FORECAST,

		/** The sum is reached after the forecast, as in past years. */
		NORMAL

	}

	/**
	 * A day of a forecast.
	 *
	 * @param date the day
	 * @param low minimum at the station, °C
	 * @param high maximum at the station, °C
	 */
	public record ForecastDay(LocalDate date, double low, double high) {
	}

	/**
	 * Projects the date.
	 * @param record the station's record, up to the last observed day
	 * @param forecast days of a forecast in order of date, none missing between them;
	 * days already observed are passed over; a forecast that begins more than five days
	 * after the last observed day isn't used, up to five days between are bridged by the
	 * mean of the days beside them
	 * @param season the season
	 * @param measure how heat is counted
	 * @param goal the sum, in the measure's unit, and the start
	 * @param colderBy how much colder the site is than the station, °C
	 * @param normals the past seasons; the season itself is passed over
	 * @return empty when this season's observed days have a gap that can't be bridged, so
	 * that nobody knows where the sum stands
	 * @throws IllegalArgumentException when days of the forecast are missing or out of
	 * order
	 */
	public static Optional<SeasonProjection> of(DailyRecord record, List<ForecastDay> forecast, Season season,
			HeatMeasure measure, HeatGoal goal, double colderBy, SeasonPeriod normals) {
		LongToDoubleFunction daily = DegreeDaySearch.daily(record, measure, colderBy);
		LocalDate start = goal.startIn(season);
		HeatProgress walk = new HeatProgress(start, goal.sum());
		Optional<LocalDate> last = record.lastDay(Element.TMIN)
			.flatMap((low) -> record.lastDay(Element.TMAX).map((high) -> low.isBefore(high) ? low : high));
		long lastObserved = Math.min(DegreeDaySearch.end(start),
				last.map(LocalDate::toEpochDay).orElse(Long.MIN_VALUE));
		while (walk.nextDay() <= lastObserved && !walk.done()) {
			double value = daily.applyAsDouble(walk.nextDay());
			if (Double.isNaN(value) && walk.nextDay() < lastObserved) {
				return Optional.empty();
			}
			if (Double.isNaN(value)) {
				// A double method doesn't know the next minimum yet.
				break;
			}
			walk.observe(value);
		}
		if (!walk.done()) {
			walk.foresee(values(forecast, measure, colderBy));
		}
		return Optional
			.of(walk.done() ? walk.certain() : walk.normal(past(record, daily, walk, season, goal, normals)));
	}

	private static List<HeatProgress.Foreseen> values(List<ForecastDay> forecast, HeatMeasure measure,
			double colderBy) {
		List<HeatProgress.Foreseen> values = new ArrayList<>();
		for (int at = 0; at < forecast.size(); at++) {
			ForecastDay day = forecast.get(at);
			ForecastDay next = forecast.get(Math.min(at + 1, forecast.size() - 1));
			if (at > 0 && !day.date().equals(forecast.get(at - 1).date().plusDays(1))) {
				throw new IllegalArgumentException("the forecast for %s does not follow the day before".formatted(day));
			}
			values.add(new HeatProgress.Foreseen(day.date().toEpochDay(),
					measure.degreeDays(day.low() - colderBy, day.high() - colderBy, next.low() - colderBy)));
		}
		return values;
	}

	/** The dates on which past years would bring the rest. */
	private static Sample past(DailyRecord record, LongToDoubleFunction daily, HeatProgress walk, Season season,
			HeatGoal goal, SeasonPeriod normals) {
		List<Double> dates = new ArrayList<>();
		int without = 0;
		int leftOut = 0;
		for (int year = normals.from(); year <= normals.to(); year++) {
			if (year == season.year()) {
				continue;
			}
			Season then = new Season(year, season.hemisphere());
			LocalDate start = goal.startIn(then);
			long from = start.toEpochDay() + walk.daysCounted();
			SeasonOutcome outcome = DegreeDaySearch.walk(record, then, daily, from, DegreeDaySearch.end(start),
					walk.rest());
			if (outcome.date() != null) {
				dates.add((double) (walk.nextDay() + outcome.date().toEpochDay() - from));
			}
			without += (outcome.state() == SeasonOutcome.State.WITHOUT) ? 1 : 0;
			leftOut += (outcome.state() == SeasonOutcome.State.LEFT_OUT) ? 1 : 0;
		}
		return new Sample(dates.stream().mapToDouble(Double::doubleValue).toArray(), without, leftOut);
	}

}
