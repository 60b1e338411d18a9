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
 * Heap taken by the statistics of ten thousand stations with thirty years each, the forty
 * markers drawn from each for places at three heights, the daily records gone, beside
 * what the statistics say of themselves, by which {@link LocalClimate} bounds them.
 * Target: under 200 MB.
 */
public final class StatisticsMemory {

	private static final int STATIONS = 10_000;

	private static final int HIGHEST = 200;

	private StatisticsMemory() {
	}

	/**
	 * Runs the measurement and prints it.
	 * @param args number of stations and how far above them the highest place lies, m;
	 * ten thousand and 200 when left out
	 */
	public static void main(String[] args) throws Exception {
		int stations = (args.length == 2) ? Integer.parseInt(args[0]) : STATIONS;
		int highest = (args.length == 2) ? Integer.parseInt(args[1]) : HIGHEST;
		long before = used();
		List<StationClimate> held = new ArrayList<>();
		BenchClimate.each(stations, (number) -> {
			AtomicReference<DailyRecord> record = new AtomicReference<>(BenchWeather.record(number));
			StationClimate climate = new StationClimate(BenchWeather.station(number),
					() -> Objects.requireNonNull(record.get(), "the record is gone"));
			draw(climate, highest, BenchMarkers.ALL);
			record.set(null);
			synchronized (held) {
				held.add(climate);
			}
		});
		long after = used();
		// Fails where an answer would need the record after all; and keeps the list alive.
		// Sums of heat are drawn from the record for every place.
		List<MarkerKey> kept = BenchMarkers.ALL.stream().filter((key) -> key.kind() != MarkerKind.DEGREE_DAYS).toList();
		held.forEach((climate) -> draw(climate, highest, kept));
		System.out.printf("MEMORY %d stations, places up to %d m above them: %.1f MB, %d bytes each, %.1f MB by own count%n",
				held.size(), highest, (after - before) / 1e6, (after - before) / stations,
				held.stream().mapToLong(StationClimate::bytes).sum() / 1e6);
	}

	private static void draw(StationClimate climate, int highest, List<MarkerKey> keys) {
		GeoPoint at = climate.station().point();
		for (int higher = 0; higher <= highest; higher += 100) {
			GeoPoint place = new GeoPoint(at.latitude(), at.longitude(), at.elevationMetres() + higher);
			PlaceMarkers markers = new BlendedPlace(place.hemisphere(),
					Neighbour.choose(place, List.of(climate.station()), (station) -> Optional.of(climate)));
			keys.forEach((key) -> markers.on(key, 2025));
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
