package org.leafward.climate;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The freezes of a station over a period: each season's dates and the probabilities drawn
 * from them, enough for a table and a curve.
 *
 * @param station the station
 * @param threshold what counts as a freeze
 * @param from year of the first season
 * @param to year of the last season
 * @param spring last spring freeze; a point's probability is the chance of a freeze on or
 * after its date
 * @param fall first fall freeze; the chance of a freeze on or before the date
 * @param length days strictly between the two; the chance of a season with at most that
 * many days
 * @param seasons one row for each season
 */
public record FreezeDates(Station station, TemperatureThreshold threshold, int from, int to, Curve spring, Curve fall,
		Curve length, List<SeasonRow> seasons) {

	public FreezeDates {
		seasons = List.copyOf(seasons);
	}

	/**
	 * Probabilities 1 to 99 %.
	 *
	 * @param used seasons with a value, which the points come from
	 * @param without seasons without a freeze
	 * @param leftOut seasons that can't be told for missing days
	 * @param undefined why there are no points, or null
	 * @param points in the order of their probability, or none
	 */
	public record Curve(int used, int without, int leftOut, @Nullable String undefined, List<Point> points) {

		public Curve {
			points = List.copyOf(points);
		}

	}

	/**
	 * A point of a curve.
	 *
	 * @param probability percent
	 * @param value day number as {@link org.leafward.measure.SeasonDay} counts, or days
	 * for the length; may be fractional
	 * @param date the day, halves to the later one; null for the length
	 */
	public record Point(int probability, double value, @Nullable MonthDay date) {
	}

	/**
	 * A season.
	 *
	 * @param season its year
	 * @param lastSpring last spring freeze, null when there is none or it can't be told
	 * @param firstFall first fall freeze, likewise
	 * @param frostFreeDays days strictly between, when both are known
	 * @param springMissing days without a minimum on the way to the spring date
	 * @param fallMissing days without a minimum on the way to the fall date
	 */
	public record SeasonRow(int season, @Nullable LocalDate lastSpring, @Nullable LocalDate firstFall,
			@Nullable Integer frostFreeDays, int springMissing, int fallMissing) {
	}

}
