package org.leafward.climate.core.place;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.MinimumComparison;
import org.leafward.climate.MinimumReading;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.Neighbour;

/**
 * Lays readings of a minimum thermometer beside the estimate for open, level ground: the
 * mean of the stations' minima of that day, each moved to the height of the place, with
 * the weights that the season markers give these stations. So what is measured shifts the
 * markers by just what they lack.
 */
public final class ComparedMinima {

	private static final int TENTHS = 10;

	private ComparedMinima() {
	}

	/**
	 * Compares.
	 * @param readings one for each day
	 * @param neighbours the stations that speak for the place; their microclimate doesn't
	 * count
	 * @return the comparison
	 */
	public static MinimumComparison of(List<MinimumReading> readings, List<Neighbour> neighbours) {
		List<Speaker> speakers = neighbours.stream()
			.map((one) -> new Speaker(one.climate().record(), one.colderBy(), one.weight()))
			.toList();
		List<MinimumComparison.Night> nights = readings.stream()
			.sorted(Comparator.comparing(MinimumReading::day))
			.map((reading) -> new MinimumComparison.Night(reading.day(), reading.celsius(),
					estimate(reading.day(), speakers)))
			.toList();
		List<Double> differences = new ArrayList<>();
		for (MinimumComparison.Night night : nights) {
			Double difference = night.difference();
			if (difference != null) {
				differences.add(difference);
			}
		}
		Double mean = differences.isEmpty() ? null : mean(differences);
		return new MinimumComparison(nights, differences.size(), mean,
				(mean == null || differences.size() < 2) ? null : spread(differences, mean),
				neighbours.stream().map((one) -> one.climate().station()).toList(), lastDay(speakers));
	}

	/** A station's record, read once. */
	private record Speaker(DailyRecord record, double colderBy, double weight) {
	}

	private static @Nullable Double estimate(LocalDate day, List<Speaker> speakers) {
		double sum = 0;
		double weights = 0;
		for (Speaker speaker : speakers) {
			short minimum = speaker.record().value(Element.TMIN, day);
			if (minimum != DailyRecord.MISSING) {
				sum += speaker.weight() * ((double) minimum / TENTHS - speaker.colderBy());
				weights += speaker.weight();
			}
		}
		return (weights > 0) ? Double.valueOf(sum / weights) : null;
	}

	private static double mean(List<Double> values) {
		return values.stream().mapToDouble(Double::doubleValue).sum() / values.size();
	}

	private static double spread(List<Double> values, double mean) {
		double squares = values.stream().mapToDouble((value) -> (value - mean) * (value - mean)).sum();
		return Math.sqrt(squares / (values.size() - 1));
	}

	private static @Nullable LocalDate lastDay(List<Speaker> speakers) {
		return speakers.stream()
			.map((one) -> one.record().lastDay(Element.TMIN))
			.flatMap(Optional::stream)
			.max(LocalDate::compareTo)
			.orElse(null);
	}

}
