package org.leafward.climate.core;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.leafward.climate.FreezeDates;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.SeasonDay;

/** Draws up {@link FreezeDates}. */
public final class FreezeTable {

	/** Any year. */
	private static final int SOME_YEAR = 2001;

	private FreezeTable() {
	}

	/**
	 * Draws up the table of a station, at its own height.
	 * @param climate the station
	 * @param period which seasons
	 * @param threshold what counts as a freeze
	 * @return the table; curves without points say why
	 */
	public static FreezeDates of(StationClimate climate, SeasonPeriod period, TemperatureThreshold threshold) {
		Hemisphere hemisphere = climate.station().point().hemisphere();
		List<SeasonOutcome> springs = climate.outcomes(MarkerKind.LAST_SPRING_FREEZE, threshold, 0, hemisphere, period);
		List<SeasonOutcome> falls = climate.outcomes(MarkerKind.FIRST_FALL_FREEZE, threshold, 0, hemisphere, period);
		List<FreezeDates.SeasonRow> rows = new ArrayList<>();
		for (int at = 0; at < springs.size(); at++) {
			SeasonOutcome spring = springs.get(at);
			SeasonOutcome fall = falls.get(at);
			OptionalInt days = FreezeSearch.frostFreeDays(spring, fall);
			rows.add(new FreezeDates.SeasonRow(spring.season(), spring.date(), fall.date(),
					days.isPresent() ? days.getAsInt() : null, spring.missing(), fall.missing()));
		}
		return new FreezeDates(climate.station(), threshold, period.from(), period.to(),
				curve(Sample.ofDates(springs), true, true), curve(Sample.ofDates(falls), false, true),
				curve(lengths(springs, falls), false, false), rows);
	}

	/**
	 * The frost-free lengths of seasons.
	 * @param springs outcome of each spring
	 * @param falls outcome of each fall of the same seasons
	 * @return the sample, in days
	 */
	public static Sample lengths(List<SeasonOutcome> springs, List<SeasonOutcome> falls) {
		List<Integer> days = new ArrayList<>();
		int leftOut = 0;
		for (int at = 0; at < springs.size(); at++) {
			FreezeSearch.frostFreeDays(springs.get(at), falls.get(at)).ifPresent(days::add);
			if (springs.get(at).state() == SeasonOutcome.State.LEFT_OUT
					|| falls.get(at).state() == SeasonOutcome.State.LEFT_OUT) {
				leftOut++;
			}
		}
		return new Sample(days.stream().mapToDouble(Integer::doubleValue).toArray(),
				springs.size() - days.size() - leftOut, leftOut);
	}

	private static FreezeDates.Curve curve(Sample sample, boolean spring, boolean dates) {
		String undefined = sample.undefined().orElse(null);
		List<FreezeDates.Point> points = (undefined != null) ? List.of()
				: IntStream.rangeClosed(1, 99)
					.mapToObj((percent) -> point(percent, sample.quantile(spring ? 100 - percent : percent), dates))
					.toList();
		return new FreezeDates.Curve(sample.used(), sample.without(), sample.leftOut(), undefined, points);
	}

	/**
	 * A point of a curve.
	 * @param percent probability
	 * @param value day number, or days
	 * @param date whether it is a day number
	 * @return the point
	 */
	public static FreezeDates.Point point(int percent, double value, boolean date) {
		return new FreezeDates.Point(percent, value, date ? MonthDay.from(SeasonDay.toDate(value, SOME_YEAR)) : null);
	}

}
