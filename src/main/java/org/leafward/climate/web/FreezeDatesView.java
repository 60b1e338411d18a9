package org.leafward.climate.web;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.FreezeDates;

/**
 * Freeze dates as the API gives them.
 *
 * @param station identifier
 * @param threshold what counts as a freeze
 * @param thresholdInWords the same for readers
 * @param from year of the first season
 * @param to year of the last season
 * @param lastSpringFreeze probability: a freeze on or after the date
 * @param firstFallFreeze probability: a freeze on or before the date
 * @param frostFreeDays probability: a season with at most that many days
 * @param seasons one row for each season
 */
record FreezeDatesView(String station, String threshold, String thresholdInWords, int from, int to,
		Curve lastSpringFreeze, Curve firstFallFreeze, Curve frostFreeDays, List<FreezeDates.SeasonRow> seasons) {

	static FreezeDatesView of(FreezeDates dates) {
		return new FreezeDatesView(dates.station().id().value(), dates.threshold().code(), dates.threshold().words(),
				dates.from(), dates.to(), Curve.of(dates.spring()), Curve.of(dates.fall()), Curve.of(dates.length()),
				dates.seasons());
	}

	/** Probabilities 10, 20 … 90 %. */
	record Curve(int seasonsUsed, int seasonsWithout, int seasonsLeftOut, @Nullable String undefined,
			List<Point> probabilities) {

		static Curve of(FreezeDates.Curve curve) {
			List<Point> points = curve.points()
				.stream()
				.filter((point) -> point.probability() % 10 == 0)
				.map(Point::of)
				.toList();
			return new Curve(curve.used(), curve.without(), curve.leftOut(), curve.undefined(), points);
		}

	}

	/** One probability, with a month and day as 05-15 or a number of days. */
	record Point(int percent, @Nullable String date, @Nullable Double days) {

		static Point of(FreezeDates.Point point) {
			return (point.date() != null)
					? new Point(point.probability(),
							String.format(Locale.ROOT, "%02d-%02d", point.date().getMonthValue(),
									point.date().getDayOfMonth()),
							null)
					: new Point(point.probability(), null, Math.round(point.value() * 10) / 10.0);
		}

	}

}
