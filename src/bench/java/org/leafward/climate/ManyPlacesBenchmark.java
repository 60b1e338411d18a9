package org.leafward.climate;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Ten thousand places, each at its own height, among two thousand stations, for one
 * season, by the service on the embedded database, two threads, as two nodes or two
 * requests would ask at once; one answer uses one thread. The first round finds no statistics and reads every
 * record; the others ask for other places. Those with the target, under 10 s: all markers
 * that the shipped rule packs hang on, and the same with forty markers. The last round
 * also puts every explanation into words. Beside the time of the clock stands that of the
 * processors, Java's without the database server's, since others may use the machine.
 */
public final class ManyPlacesBenchmark {

	private static final int STATIONS = 2_000;

	private static final int PLACES = 10_000;

	private static final int SEASON = 2025;

	private static final int TURNS = 3;

	/**
	 * Places lie up to 800 m above or below a station; what is kept of it widens for some
	 * rounds yet.
	 */
	private static final int TURNS_OF_PACKS = 6;

	private ManyPlacesBenchmark() {
	}

	/**
	 * Runs the benchmark and prints what it took.
	 * @param args none
	 */
	public static void main(String[] args) throws Exception {
		try (BenchClimate climate = new BenchClimate()) {
			climate.load(STATIONS);
			LocalClimate service = climate.services().climate();
			List<MarkerKey> packs = BenchMarkers.ofPacks();
			round("statistics cold", service, 11, BenchMarkers.ALL, false);
			for (int turn = 0; turn < TURNS; turn++) {
				round("warm, other places", service, 22 + turn, BenchMarkers.ALL, false);
			}
			for (int turn = 0; turn < TURNS_OF_PACKS; turn++) {
				round("warm, other places, markers of the packs", service, 12 + turn, packs, false);
			}
			round("warm, other places, explained", service, 32, BenchMarkers.ALL, true);
		}
	}

	private static void round(String what, LocalClimate service, long seed, List<MarkerKey> keys,
			boolean explained) throws Exception {
		AtomicLong dated = new AtomicLong();
		double before = processors();
		double took = BenchClimate.each(PLACES, (number) -> {
			PlaceMarkers markers = service.markersAt(BenchWeather.point(number, seed));
			for (MarkerKey key : keys) {
				markers.on(key, SEASON).ifPresent((marker) -> {
					if (!explained || !marker.explanation().steps().isEmpty()) {
						dated.incrementAndGet();
					}
				});
			}
		});
		System.out.printf("PLACES %d places, %d stations, %d markers, %s: %.1f s, %.1f s of processors, %d dates%n", PLACES,
				STATIONS, keys.size(), what, took, processors() - before, dated.get());
	}

	private static double processors() {
		return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime() / 1e9;
	}

}
