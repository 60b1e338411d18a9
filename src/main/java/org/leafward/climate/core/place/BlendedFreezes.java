package org.leafward.climate.core.place;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.FreezeClimatology.Blended;
import org.leafward.climate.FreezeClimatology.Spread;
import org.leafward.climate.FreezeClimatology.StationUse;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.Place;
import org.leafward.climate.Station;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.FreezeTable;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.Sample;
import org.leafward.climate.core.StationClimate;
import org.leafward.measure.Hemisphere;

/**
 * The freezes of a place, blended from its stations as season markers are: the weighted
 * mean of the stations' own quantiles.
 *
 * @param stations nearest first
 */
record BlendedFreezes(List<StationFreezes> stations) {

	private static final int STEP = 5;

	static BlendedFreezes of(Place place, NormalsPeriod period, TemperatureThreshold threshold,
			List<StationClimate> climates) {
		Hemisphere hemisphere = place.point().hemisphere();
		List<Station> stations = climates.stream().map(StationClimate::station).toList();
		List<Neighbour> neighbours = Neighbour.choose(place, period, stations,
				(station) -> climates.stream().filter((climate) -> climate.station().equals(station)).findFirst(),
				Neighbour.MOST);
		return new BlendedFreezes(
				neighbours.stream().map((neighbour) -> StationFreezes.of(neighbour, threshold, hemisphere)).toList());
	}

	Blended spring() {
		return curve(StationFreezes::spring, true, true);
	}

	Blended fall() {
		return curve(StationFreezes::fall, false, true);
	}

	Blended length() {
		return curve(StationFreezes::length, false, false);
	}

	private Blended curve(Function<StationFreezes, Sample> side, boolean spring, boolean dates) {
		if (quantile(side, 50) == null) {
			return new Blended(undefined(side), List.of());
		}
		return new Blended(null,
				IntStream.iterate(STEP, (percent) -> percent < 100, (percent) -> percent + STEP)
					.mapToObj((percent) -> FreezeTable.point(percent,
							Objects.requireNonNull(quantile(side, spring ? 100 - percent : percent)), dates))
					.toList());
	}

	private String undefined(Function<StationFreezes, Sample> side) {
		if (this.stations.isEmpty()) {
			return "no station within %.0f km has a record of %d of these seasons".formatted(Neighbour.FARTHEST,
					Sample.FEWEST_SEASONS);
		}
		return this.stations.stream()
			.map((one) -> one.neighbour().climate().station().name() + ": " + side.apply(one).undefined().orElse(""))
			.collect(Collectors.joining("; "));
	}

	/**
	 * The weighted mean of the quantiles of those stations that have one.
	 * @param side which sample
	 * @param below percent of the seasons that lie below
	 * @return null when no station has one
	 */
	@Nullable Double quantile(Function<StationFreezes, Sample> side, int below) {
		double sum = 0;
		double weights = 0;
		for (StationFreezes one : this.stations) {
			if (side.apply(one).undefined().isEmpty()) {
				sum += one.neighbour().weight() * side.apply(one).quantile(below);
				weights += one.neighbour().weight();
			}
		}
		return (weights > 0) ? Double.valueOf(sum / weights) : null;
	}

	List<StationUse> uses() {
		double weights = this.stations.stream().mapToDouble((one) -> one.neighbour().weight()).sum();
		return this.stations.stream().map((one) -> use(one, weights)).toList();
	}

	private static StationUse use(StationFreezes one, double weights) {
		Neighbour neighbour = one.neighbour();
		return new StationUse(neighbour.climate().station(), neighbour.period().from(), neighbour.period().to(),
				neighbour.weight() / weights, neighbour.distance(), neighbour.higherBy(),
				neighbour.colderBy() - neighbour.microclimate().minimumOffset(), StationFreezes.years(one.spring()),
				StationFreezes.years(one.fall()));
	}

	Spread spread() {
		return new Spread(spread(StationFreezes::spring), spread(StationFreezes::fall));
	}

	private @Nullable Double spread(Function<StationFreezes, Sample> side) {
		double[] medians = this.stations.stream()
			.map(side)
			.filter((sample) -> sample.undefined().isEmpty())
			.mapToDouble((sample) -> sample.quantile(50))
			.sorted()
			.toArray();
		return (medians.length < 2) ? null : Double.valueOf(medians[medians.length - 1] - medians[0]);
	}

}
