package org.leafward.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.leafward.climate.core.BlendedPlace;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.StationClimate;
import org.leafward.measure.GeoPoint;

/**
 * Heap taken by the statistics of ten thousand stations with thirty years each, forty
 * markers drawn from each for places at three heights, the daily records gone. Target:
 * under 200 MB.
 */
public final class StatisticsMemory {

	private static final int STATIONS = 10_000;

	private StatisticsMemory() {
	}

	/**
	 * Runs the measurement and prints it.
	 * @param args none
	 */
	public static void main(String[] args) throws Exception {
		long before = used();
		List<StationClimate> held = new ArrayList<>();
		BenchClimate.each(STATIONS, (number) -> {
			AtomicReference<DailyRecord> record = new AtomicReference<>(BenchWeather.record(number));
			StationClimate climate = new StationClimate(BenchWeather.station(number),
					() -> Objects.requireNonNull(record.get(), "the record is gone"));
			draw(climate);
			record.set(null);
			synchronized (held) {
				held.add(climate);
			}
		});
		long after = used();
		// Fails where an answer would need the record after all; and keeps the list alive.
		held.forEach(StatisticsMemory::draw);
		System.out.printf("MEMORY %d stations: %.1f MB, %d bytes each%n", held.size(), (after - before) / 1e6,
				(after - before) / STATIONS);
	}

	private static void draw(StationClimate climate) {
		GeoPoint at = climate.station().point();
		for (int higher = 0; higher <= 200; higher += 100) {
			GeoPoint place = new GeoPoint(at.latitude(), at.longitude(), at.elevationMetres() + higher);
			PlaceMarkers markers = new BlendedPlace(place.hemisphere(),
					Neighbour.choose(place, List.of(climate.station()), (station) -> Optional.of(climate)));
			BenchMarkers.ALL.forEach((key) -> markers.on(key, 2025));
		}
	}

	private static long used() {
		Runtime runtime = Runtime.getRuntime();
		long used = Long.MAX_VALUE;
		for (int turn = 0; turn < 4; turn++) {
			System.gc();
			used = Math.min(used, runtime.totalMemory() - runtime.freeMemory());
		}
		return used;
	}

}
