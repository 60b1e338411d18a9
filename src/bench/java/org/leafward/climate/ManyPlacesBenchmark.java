package org.leafward.climate;

import java.util.concurrent.atomic.AtomicLong;

/**
 * Ten thousand places among two thousand stations, forty markers each for one season, by
 * the service on the embedded database, two threads. The first round finds no statistics
 * and reads every record; the second asks for other places and is the one with the
 * target: under 10 s. The third also puts every explanation into words.
 */
public final class ManyPlacesBenchmark {

	private static final int STATIONS = 2_000;

	private static final int PLACES = 10_000;

	private static final int SEASON = 2025;

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
			round("statistics cold", service, 11, false);
			round("statistics warm, other places", service, 12, false);
			round("statistics warm, other places", service, 13, false);
			round("statistics warm, other places, explained", service, 14, true);
		}
	}

	private static void round(String what, LocalClimate service, long seed, boolean explained) throws Exception {
		AtomicLong dated = new AtomicLong();
		double took = BenchClimate.each(PLACES, (number) -> {
			PlaceMarkers markers = service.markersAt(BenchWeather.point(number, seed));
			for (MarkerKey key : BenchMarkers.ALL) {
				markers.on(key, SEASON).ifPresent((marker) -> {
					if (!explained || !marker.explanation().steps().isEmpty()) {
						dated.incrementAndGet();
					}
				});
			}
		});
		System.out.printf("PLACES %d places, %d stations, %s: %.1f s, %d dates%n", PLACES, STATIONS, what, took,
				dated.get());
	}

}
