package org.leafward.climate;

import java.time.Duration;
import org.leafward.climate.core.DailyRecord;
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
		double ownBefore = own();
		double making = BenchClimate.each(STATIONS, (number) -> {
			int days = BenchWeather.days(number).size();
			synchronized (made) {
				made[0] += days;
			}
		});
		double ownMaking = own() - ownBefore;
		try (BenchClimate climate = new BenchClimate()) {
			JdbcClient jdbc = JdbcClient.create(climate.source());
			double serverBefore = climate.server().processorSeconds();
			String walBefore = jdbc.sql("select pg_current_wal_lsn()::text").query(String.class).single();
			ownBefore = own();
			long start = System.nanoTime();
			climate.load(STATIONS);
			double took = (System.nanoTime() - start) / 1e9;
			double ownTook = own() - ownBefore;
			double server = climate.server().processorSeconds() - serverBefore;
			long wal = jdbc.sql("select (pg_current_wal_lsn() - :before::pg_lsn)::bigint")
				.param("before", walBefore)
				.query(Long.class)
				.single();
			check(climate);
			long disk = jdbc.sql("select pg_total_relation_size('climate.observation_month')")
				.query(Long.class)
				.single();
			System.out.printf("LOAD %d stations, %d days: %.1f s, of which %.1f s made the days up; loading %.1f s%n",
					STATIONS, made[0], took, making, took - making);
			System.out.printf(
					"processor: Java %.1f s (%.1f s of it made the days up), PostgreSQL %.1f s; written ahead %d MB, on disk %d MB%n",
					ownTook, ownMaking, server, wal >> 20, disk >> 20);
		}
	}

	/** Reads records back, and fails when one of them isn't what was loaded. */
	private static void check(BenchClimate climate) {
		for (int number = 0; number < STATIONS; number += 25) {
			DailyRecord read = climate.services().tables().observations().read(BenchWeather.station(number).id()).record();
			if (!read.equals(BenchWeather.record(number))) {
				throw new IllegalStateException("station %d was not stored as it was given".formatted(number));
			}
		}
	}

	private static double own() {
		return ProcessHandle.current().info().totalCpuDuration().map(Duration::toNanos).orElse(0L) / 1e9;
	}

}
