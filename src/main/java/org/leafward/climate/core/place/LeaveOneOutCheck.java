package org.leafward.climate.core.place;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.FreezeClimatology.LeaveOneOut;
import org.leafward.climate.FreezeClimatology.LeftOut;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.Place;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.Sample;
import org.leafward.climate.core.StationClimate;

/**
 * Foretells each station from the others, which tells how far the blend can be trusted
 * where no station stands. A station has level ground here, since nothing else is known
 * of it, and the others are those around the place, so one at the edge is foretold from
 * farther ones than it has.
 */
final class LeaveOneOutCheck {

	private LeaveOneOutCheck() {
	}

	static LeaveOneOut of(NormalsPeriod period, TemperatureThreshold threshold, List<Neighbour> checked) {
		List<StationClimate> climates = checked.stream().map(Neighbour::climate).toList();
		List<LeftOut> rows = checked.stream().map((one) -> row(one, period, threshold, climates)).toList();
		double[] spring = errors(rows, LeftOut::springOwn, LeftOut::springForetold);
		double[] fall = errors(rows, LeftOut::fallOwn, LeftOut::fallForetold);
		return new LeaveOneOut(mean(spring), spring.length, mean(fall), fall.length, rows);
	}

	private static LeftOut row(Neighbour one, NormalsPeriod period, TemperatureThreshold threshold,
			List<StationClimate> climates) {
		StationClimate climate = one.climate();
		Place itself = Place.of(climate.station().point());
		BlendedFreezes others = BlendedFreezes.of(itself, period, threshold,
				climates.stream().filter((other) -> other != climate).toList());
		BlendedFreezes own = BlendedFreezes.of(itself, period, threshold, List.of(climate));
		return new LeftOut(climate.station(), median(own, StationFreezes::spring),
				median(others, StationFreezes::spring), median(own, StationFreezes::fall),
				median(others, StationFreezes::fall));
	}

	private static @Nullable Double median(BlendedFreezes freezes, Function<StationFreezes, Sample> side) {
		return freezes.quantile(side, 50);
	}

	private static double[] errors(List<LeftOut> rows, Function<LeftOut, @Nullable Double> own,
			Function<LeftOut, @Nullable Double> foretold) {
		return rows.stream().flatMapToDouble((row) -> error(own.apply(row), foretold.apply(row))).toArray();
	}

	private static DoubleStream error(@Nullable Double own, @Nullable Double foretold) {
		return (own == null || foretold == null) ? DoubleStream.empty() : DoubleStream.of(Math.abs(own - foretold));
	}

	private static @Nullable Double mean(double[] errors) {
		OptionalDouble mean = DoubleStream.of(errors).average();
		return mean.isPresent() ? mean.getAsDouble() : null;
	}

}
