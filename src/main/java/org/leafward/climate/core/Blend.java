package org.leafward.climate.core;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.leafward.climate.MarkerKey;
import org.leafward.measure.Hemisphere;

/**
 * The dates of one marker at a site: the weighted mean of its stations' own dates.
 *
 * @param parts the stations that have a date, with weights that add up to one
 * @param silent the stations that have none
 */
record Blend(List<Part> parts, List<Silent> silent) {

	/** Part of the seasons before {@link #earliest}, percent. */
	private static final int EARLY = 10;

	/** Part of the seasons before {@link #latest}, percent. */
	private static final int LATE = 90;

	static Blend of(MarkerKey key, List<Neighbour> neighbours, Hemisphere hemisphere) {
		List<Part> parts = new ArrayList<>();
		List<Silent> silent = new ArrayList<>();
		int below = key.kind().spring() ? 100 - key.probability() : key.probability();
		for (Neighbour neighbour : neighbours) {
			Sample sample = neighbour.climate()
				.sample(key, neighbour.colderBy(key.kind()), hemisphere, neighbour.period());
			sample.undefined()
				.ifPresentOrElse((reason) -> silent.add(new Silent(neighbour, sample, reason)),
						() -> parts.add(new Part(neighbour, sample, neighbour.weight(), sample.quantile(below),
								sample.quantile(EARLY), sample.quantile(LATE))));
		}
		double sum = parts.stream().mapToDouble(Part::weight).sum();
		return new Blend(parts.stream().map((part) -> part.withWeight(part.weight() / sum)).toList(),
				List.copyOf(silent));
	}

	double day() {
		return mean(Part::day);
	}

	double earliest() {
		return mean(Part::earliest);
	}

	double latest() {
		return mean(Part::latest);
	}

	private double mean(ToDoubleFunction<Part> day) {
		return this.parts.stream().mapToDouble((part) -> part.weight() * day.applyAsDouble(part)).sum();
	}

	/** A station with a date; days as {@link org.leafward.measure.SeasonDay} counts. */
	record Part(Neighbour neighbour, Sample sample, double weight, double day, double earliest, double latest) {

		Part withWeight(double other) {
			return new Part(this.neighbour, this.sample, other, this.day, this.earliest, this.latest);
		}

	}

	/** A station without a date, and why. */
	record Silent(Neighbour neighbour, Sample sample, String reason) {
	}

}
