package org.leafward.climate;

import java.io.IOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.leafward.platform.database.BenchServer;

/** The services of climate on an embedded server, and the work of two threads. */
final class BenchClimate implements AutoCloseable {

	private static final int THREADS = 2;

	private final BenchServer server = new BenchServer();

	private final ClimateFixture services = ClimateFixture.on(this.server.source());

	BenchClimate() throws IOException {
	}

	DataSource source() {
		return this.server.source();
	}

	BenchServer server() {
		return this.server;
	}

	ClimateFixture services() {
		return this.services;
	}

	/** Registers stations and loads their records; the records are made on the way. */
	void load(int stations) throws Exception {
		each(stations, (number) -> {
			this.services.stations().register(BenchWeather.station(number));
			this.services.observations().load(BenchWeather.station(number).id(), BenchWeather.days(number));
		});
	}

	/** Does something for each number, in two threads; seconds that it took. */
	static double each(int numbers, IntConsumer work) throws Exception {
		long start = System.nanoTime();
		ExecutorService threads = Executors.newFixedThreadPool(THREADS);
		try {
			for (Future<Void> done : threads.invokeAll(IntStream.range(0, THREADS)
				.<Callable<Void>>mapToObj((thread) -> () -> part(numbers, thread, work))
				.toList())) {
				done.get();
			}
		}
		catch (ExecutionException ex) {
			throw new IllegalStateException(ex);
		}
		finally {
			threads.shutdownNow();
		}
		return (System.nanoTime() - start) / 1e9;
	}

	private static Void part(int numbers, int thread, IntConsumer work) {
		for (int number = thread; number < numbers; number += THREADS) {
			work.accept(number);
		}
		return null;
	}

	@Override
	public void close() throws IOException {
		this.server.close();
	}

}
