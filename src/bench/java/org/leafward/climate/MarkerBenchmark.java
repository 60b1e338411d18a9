package org.leafward.climate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.leafward.climate.core.BlendedPlace;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.StationClimate;
import org.leafward.measure.GeoPoint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Forty markers of one place for one season from three stations whose statistics are
 * warm, and all those that the shipped rules and phases hang on. Target: under 1 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode({ Mode.AverageTime, Mode.SampleTime })
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class MarkerBenchmark {

	private static final int SEASON = 2025;

	private static final GeoPoint PLACE = new GeoPoint(42, -91, 230);

	private List<Station> stations;

	private Map<Station, StationClimate> climates;

	private final List<MarkerKey> packs = BenchMarkers.ofPacks();

	private int turn;

	/** Makes up three stations around the place and asks each for everything once. */
	@Setup(Level.Trial)
	public void warm() {
		this.stations = IntStream.range(0, 3)
			.mapToObj((number) -> new Station(new StationId("ZZ%09d".formatted(number)), "Station " + number,
					new GeoPoint(42.1 + 0.1 * number, -91.2, 200 + 40 * number), true))
			.toList();
		this.climates = this.stations.stream()
			.collect(Collectors.toMap((station) -> station,
					(station) -> new StationClimate(station, BenchWeather.record(this.stations.indexOf(station)))));
		place(PLACE);
	}

	/** The same place again: chooses, blends, and says how each date came about. */
	@Benchmark
	public void samePlaceExplained(Blackhole hole) {
		ask(place(PLACE), BenchMarkers.ALL, hole, true);
	}

	/** The same place, dates only. */
	@Benchmark
	public void samePlaceDates(Blackhole hole) {
		ask(place(PLACE), BenchMarkers.ALL, hole, false);
	}

	/** Each time at another height, so that each threshold is a new one. */
	@Benchmark
	public void anotherPlaceExplained(Blackhole hole) {
		ask(place(next()), BenchMarkers.ALL, hole, true);
	}

	/** At another height each time, dates only. */
	@Benchmark
	public void anotherPlaceDates(Blackhole hole) {
		ask(place(next()), BenchMarkers.ALL, hole, false);
	}

	/** At another height each time, all markers of the packs, dates only. */
	@Benchmark
	public void anotherPlaceDatesOfPacks(Blackhole hole) {
		ask(place(next()), this.packs, hole, false);
	}

	private GeoPoint next() {
		this.turn++;
		return new GeoPoint(42, -91, 100 + (this.turn * 7.77) % 1000);
	}

	private PlaceMarkers place(GeoPoint point) {
		return new BlendedPlace(point.hemisphere(), Neighbour.choose(point, this.stations,
				(station) -> Optional.ofNullable(this.climates.get(station))));
	}

	private static void ask(PlaceMarkers markers, List<MarkerKey> keys, Blackhole hole, boolean explained) {
		for (MarkerKey key : keys) {
			Optional<SeasonMarker> marker = markers.on(key, SEASON);
			hole.consume(marker);
			if (explained && marker.isPresent()) {
				hole.consume(marker.get().explanation());
			}
		}
	}

}
