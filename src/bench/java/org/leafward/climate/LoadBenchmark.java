package org.leafward.climate;

import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * A thousand stations with thirty years each, from days in memory to rows on the disk, by
 * the service that loads files. The making of the days is measured by itself and taken
 * off. Target: under 60 s on two cores.
 */
public final class LoadBenchmark {

	private static final int STATIONS = 1_000;

	private LoadBenchmark() {
	}

	/**
	 * Runs the benchmark and prints what it took.
	 * @param args none
	 */
	public static void main(String[] args) throws Exception {
		long[] made = new long[1];
		double making = BenchClimate.each(STATIONS, (number) -> {
			int days = BenchWeather.days(number).size();
			synchronized (made) {
				made[0] += days;
			}
		});
		try (BenchClimate climate = new BenchClimate()) {
			long start = System.nanoTime();
			climate.load(STATIONS);
			double took = (System.nanoTime() - start) / 1e9;
			long rows = JdbcClient.create(climate.source())
				.sql("select count(*) from climate.observation")
				.query(Long.class)
				.single();
			if (rows < made[0] - 10) {
				throw new IllegalStateException("%d rows for %d days".formatted(rows, made[0]));
			}
			System.out.printf("LOAD %d stations, %d rows: %.1f s, of which %.1f s made the days up; loading %.1f s%n",
					STATIONS, rows, took, making, took - making);
		}
	}

}
