package org.leafward.climate;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The freezes of a place: the dates of its stations at the threshold shifted to the
 * place, blended, with what is needed to judge them. Day numbers count as
 * {@link org.leafward.measure.SeasonDay} does; differences are in days.
 *
 * @param place the place
 * @param threshold what counts as a freeze at the place
 * @param period the seasons asked for
 * @param spring last spring freeze; a point's probability is the chance of a freeze on or
 * after its date
 * @param fall first fall freeze; the chance of a freeze on or before the date
 * @param length days strictly between the two; the chance of a season with at most that
 * many days
 * @param stations the stations used, nearest first; their weights add up to 1
 * @param spread how far the stations disagree
 * @param check how far the blend misses stations that it doesn't know
 * @param periods the same for every period
 */
public record FreezeClimatology(Place place, TemperatureThreshold threshold, NormalsPeriod period, Blended spring,
		Blended fall, Blended length, List<StationUse> stations, Spread spread, LeaveOneOut check,
		List<PeriodRow> periods) {

	public FreezeClimatology {
		stations = List.copyOf(stations);
		periods = List.copyOf(periods);
	}

	/**
	 * A blended curve.
	 *
	 * @param undefined why there are no points, or null
	 * @param points probabilities 5, 10, 15 … 95 %, or none
	 */
	public record Blended(@Nullable String undefined, List<FreezeDates.Point> points) {

		public Blended {
			points = List.copyOf(points);
		}

		/**
		 * The value at a probability.
		 * @param probability percent, a multiple of 5
		 * @return day number or days, or null where there is none
		 */
		public @Nullable Double at(int probability) {
			return this.points.stream()
				.filter((point) -> point.probability() == probability)
				.map(FreezeDates.Point::value)
				.findFirst()
				.orElse(null);
		}

	}

	/**
	 * A station that speaks for the place.
	 *
	 * @param station the station
	 * @param from year of the first season
	 * @param to year of the last season
	 * @param weight its share, 0 to 1; where a station has no date the others share its
	 * weight
	 * @param distanceKilometres how far it is
	 * @param higherByMetres how much higher the place lies
	 * @param colderByCelsius how much colder the place's minimum is, for its height and
	 * its microclimate
	 * @param spring what its record says of the spring at the place
	 * @param fall what its record says of the fall at the place
	 */
	public record StationUse(Station station, int from, int to, double weight, double distanceKilometres,
			double higherByMetres, double colderByCelsius, Years spring, Years fall) {
	}

	/**
	 * The seasons of a station.
	 *
	 * @param median median day number of the shifted threshold, null when undefined
	 * @param used seasons with a date
	 * @param without seasons without a freeze
	 * @param leftOut seasons that can't be told for missing days
	 * @param undefined why there is no median, or null
	 */
	public record Years(@Nullable Double median, int used, int without, int leftOut, @Nullable String undefined) {
	}

	/**
	 * The difference between the latest and the earliest median of the stations, days;
	 * null with fewer than two medians.
	 *
	 * @param spring of the last spring freeze
	 * @param fall of the first fall freeze
	 */
	public record Spread(@Nullable Double spring, @Nullable Double fall) {
	}

	/**
	 * The leave-one-out error: each station's median is foretold from the others around
	 * the place, at its own point and height, on level ground.
	 *
	 * @param springError mean absolute error of the spring median, days; null when none
	 * could be foretold
	 * @param springCount stations whose spring was foretold
	 * @param fallError mean absolute error of the fall median, days, or null
	 * @param fallCount stations whose fall was foretold
	 * @param rows the stations, nearest first
	 */
	public record LeaveOneOut(@Nullable Double springError, int springCount, @Nullable Double fallError, int fallCount,
			List<LeftOut> rows) {

		public LeaveOneOut {
			rows = List.copyOf(rows);
		}

	}

	/**
	 * A station foretold from the others; day numbers, null where undefined.
	 *
	 * @param station the station
	 * @param springOwn its median spring day
	 * @param springForetold as the others have it
	 * @param fallOwn its median fall day
	 * @param fallForetold as the others have it
	 */
	public record LeftOut(Station station, @Nullable Double springOwn, @Nullable Double springForetold,
			@Nullable Double fallOwn, @Nullable Double fallForetold) {
	}

	/**
	 * The main dates of a period.
	 *
	 * @param period which
	 * @param from earliest first season of its stations, null without a station
	 * @param to latest last season of its stations, or null
	 * @param stations stations that cover at least ten of its seasons, at most three
	 * @param spring safe spring date, 10 %
	 * @param springMedian median of the last spring freeze
	 * @param fallMedian median of the first fall freeze
	 * @param fall early fall date, 10 %
	 * @param length median frost-free length, days
	 */
	public record PeriodRow(NormalsPeriod period, @Nullable Integer from, @Nullable Integer to, int stations,
			Change spring, Change springMedian, Change fallMedian, Change fall, Change length) {
	}

	/**
	 * A value and how it differs from that of the latest 30 seasons.
	 *
	 * @param value day number or days, or null
	 * @param later days later (or longer) than the default, negative for earlier; null
	 * where either is missing
	 */
	public record Change(@Nullable Double value, @Nullable Double later) {
	}

}
