package org.leafward.care;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leafward.Application;
import org.leafward.climate.BenchWeather;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.Forecasts;
import org.leafward.climate.Observations;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Station;
import org.leafward.climate.Stations;
import org.leafward.plants.Catalogue;
import org.leafward.platform.database.ProcessorTime;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;

import static org.awaitility.Awaitility.await;

/**
 * A register made up straight into the embedded database and planned by the whole server:
 * the first plan, a replan that changes nothing (target under 2 minutes for 50,000 sites
 * and 1,000,000 plantings on 2 cores), a replan after a new station day, and one after
 * late freezes that move dates (target under 5 minutes), all with a heap of 1 GB.
 */
public final class ReplanBenchmark {

	private static final Duration LIMIT = Duration.ofHours(12);

	private final JdbcClient database;

	private final Replanning replanning;

	private final int sites;

	private final ProcessHandle server;

	private ReplanBenchmark(ConfigurableApplicationContext context, int sites, Path folder) throws IOException {
		this.database = context.getBean(JdbcClient.class);
		this.replanning = context.getBean(Replanning.class);
		this.sites = sites;
		this.server = server(folder);
	}

	/**
	 * Runs the benchmark and prints what it took.
	 * @param args number of sites, plantings and stations; 50000, 1000000 and 60 by default
	 */
	public static void main(String[] args) throws Exception {
		int sites = number(args, 0, 50_000);
		int plantings = number(args, 1, 1_000_000);
		int stations = number(args, 2, 60);
		Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target")), "bench-replan");
		// As arguments, since the application's own properties go before default ones.
		try (ConfigurableApplicationContext context = new SpringApplicationBuilder(Application.class).run(
				"--leafward.data-directory=" + folder, "--server.port=0", "--server.address=127.0.0.1",
				"--spring.quartz.auto-startup=false", "--logging.level.root=warn")) {
			new ReplanBenchmark(context, sites, folder).run(context, plantings, stations);
		}
		finally {
			FileSystemUtils.deleteRecursively(folder);
		}
	}

	private static int number(String[] args, int place, int otherwise) {
		return (args.length > place) ? Integer.parseInt(args[place]) : otherwise;
	}

	/**
	 * Stations with their records, and sites with plantings around them, not yet planned.
	 * @param context a server with nothing in it
	 * @param sites how many
	 * @param plantings how many in all
	 * @param stations how many
	 */
	public static void fill(ConfigurableApplicationContext context, int sites, int plantings, int stations) {
		LocalDate yesterday = LocalDate.now(ZoneId.of("America/Chicago")).minusDays(1);
		for (int i = 0; i < stations; i++) {
			Station station = BenchWeather.station(i);
			context.getBean(Stations.class).register(station);
			context.getBean(Observations.class).load(station.id(), BenchWeather.days(i, yesterday));
			context.getBean(Forecasts.class).keep(station.id(), "bench", null, forecast(i, yesterday.plusDays(1)));
		}
		register(context.getBean(JdbcClient.class), context.getBean(Catalogue.class), sites, plantings);
	}

	private void run(ConfigurableApplicationContext context, int plantings, int stations) {
		List<Station> known = IntStream.range(0, stations).mapToObj(BenchWeather::station).toList();
		Observations observations = context.getBean(Observations.class);
		LocalDate yesterday = LocalDate.now(ZoneId.of("America/Chicago")).minusDays(1);
		List<List<ObservedDay>> last = new ArrayList<>();
		for (int i = 0; i < stations; i++) {
			context.getBean(Stations.class).register(known.get(i));
			List<ObservedDay> days = BenchWeather.days(i, yesterday);
			last.add(days.subList(days.size() - 1, days.size()));
			observations.load(known.get(i).id(), days.subList(0, days.size() - 1));
			context.getBean(Forecasts.class).keep(known.get(i).id(), "bench", null, forecast(i, yesterday.plusDays(1)));
		}
		register(this.database, context.getBean(Catalogue.class), this.sites, plantings);
		replan("first plan", this.replanning::askAll);
		this.database.sql("vacuum analyze").update();
		System.out.printf("REPLAN %d tasks, %d wordings, %d explanations, database %d MB%n", count("care.task"),
				count("care.wording"), count("care.explanation"),
				this.database.sql("select pg_database_size(current_database()) / 1000000").query(Long.class).single());
		replan("nothing changed", this.replanning::askAll);
		replan("nothing changed, again", this.replanning::askAll);
		replan("a new day at one station, its sites", () -> observations.load(known.get(0).id(), last.get(0)));
		replan("a new day at all stations", () -> {
			for (int i = 0; i < stations; i++) {
				observations.load(known.get(i).id(), last.get(i));
			}
		});
		replan("late freezes in five years at one station", () -> observations.load(known.get(0).id(), lateFreezes()));
		replan("late freezes in five years at all stations",
				() -> known.forEach((station) -> observations.load(station.id(), lateFreezes())));
	}

	/** A week, cold and dry enough at some stations that tasks wait for it. */
	private static List<ForecastDay> forecast(int number, LocalDate today) {
		return IntStream.range(0, 7)
			.mapToObj((day) -> new ForecastDay(today.plusDays(day), 10 * (day - number % 12), 80 + 10 * (number % 12),
					(day + number) % 4 * 20, 0, 30, 50))
			.toList();
	}

	private static List<ObservedDay> lateFreezes() {
		return IntStream.range(2010, 2015)
			.mapToObj((year) -> new ObservedDay(LocalDate.of(year, 6, 10), -40, 150, 0, 0, 20))
			.toList();
	}

	/** Sites around the stations, plantings of all species, from numbers alone. */
	private static void register(JdbcClient database, Catalogue catalogue, int sites, int plantings) {
		database.sql("""
				insert into register.site (id, owner, name, county, latitude, longitude, elevation_metres, zone, soil, sun,
					wind, created_at)
				select md5('site' || i)::uuid, md5('owner' || i)::uuid, 'Site ' || i, '',
					s.latitude + ((i * 7919::bigint) % 1000 - 500) / 1000.0, s.longitude + ((i * 7907::bigint) % 1000 - 500) / 1000.0,
					s.elevation_metres + (i * 31::bigint) % 150, 'America/Chicago', 'LOAM', 'FULL_SUN', 'AVERAGE', now()
				from generate_series(1, ?) i
				join (select *, row_number() over (order by id) - 1 as number, count(*) over () as all_of_them
					from climate.station) s on s.number = i % s.all_of_them
				""").param(sites).update();
		String[] species = catalogue.all().stream().map((one) -> one.id().value()).toArray(String[]::new);
		database.sql("""
				insert into register.planting (id, site, species, label, count, planted_on, placement, winters_indoors,
					salt_exposed, created_at)
				select md5('planting' || i)::uuid, md5('site' || 1 + i % ?)::uuid, (?::text[])[1 + (i * 104729::bigint) % ?],
					'bed ' || i, 3, date '2008-01-01' + ((i * 7907::bigint) % 6500)::int,
					case when i % 8 = 0 then 'CONTAINER' else 'GROUND' end, i % 12 = 0, i % 10 = 0, now()
				from generate_series(1, ?) i
				""").params(sites, species, species.length, plantings).update();
		database.sql("""
				insert into register.watering (id, site, day, millimetres, note, entered_at)
				select md5('watering' || i)::uuid, md5('site' || i)::uuid, current_date - (3 + i % 60), 10 + i % 15, '', now()
				from generate_series(1, ?, 5) i
				""").param(sites).update();
		database.sql("analyze").update();
	}

	private void replan(String what, Runnable change) {
		long before = newest();
		memory(true);
		double[] spent = processors();
		long start = System.nanoTime();
		change.run();
		// The listener of loaded observations drains, too.
		await().atMost(LIMIT).pollDelay(Duration.ZERO).pollInterval(Duration.ofMillis(50)).until(() -> {
			this.replanning.drain(LIMIT);
			return waiting() == 0;
		});
		double seconds = (System.nanoTime() - start) / 1e9;
		double[] busy = processors();
		System.out.printf(
				"REPLAN %s: %.1f s, %.2f ms a site; processors %.1f s in Java, %.1f s in PostgreSQL; "
						+ "%d tasks written; heap at most %d MB%n",
				what, seconds, 1000 * seconds / this.sites, busy[0] - spent[0], busy[1] - spent[1], newest() - before,
				memory(false));
	}

	/** Processor time so far of this process and of PostgreSQL, s. */
	private double[] processors() {
		return new double[] {
				ProcessHandle.current().info().totalCpuDuration().map(Duration::toNanos).orElse(0L) / 1e9,
				ProcessorTime.ofTree(this.server) };
	}

	/** PostgreSQL, by the file that it writes beside its data. */
	private static ProcessHandle server(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			Path pid = files.filter((file) -> file.endsWith("postmaster.pid")).findFirst().orElseThrow();
			return ProcessHandle.of(Long.parseLong(Files.readAllLines(pid).get(0).strip())).orElseThrow();
		}
	}

	private long waiting() {
		return this.replanning.progress(Instant.now()).waiting() + this.database
			.sql("select count(*) from events.event_publication where listener_id like 'care.%'")
			.query(Long.class)
			.single();
	}

	/** Visible changes of tasks so far. */
	private long newest() {
		return this.database.sql("select coalesce(sum(sequence + 1), 0) from care.task").query(Long.class).single();
	}

	private long count(String table) {
		return this.database.sql("select count(*) from " + table).query(Long.class).single();
	}

	/** The most memory that the heap has held since the last reset, MB. */
	private static long memory(boolean reset) {
		long most = 0;
		for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) {
			if (pool.getType() == MemoryType.HEAP) {
				most += pool.getPeakUsage().getUsed();
				if (reset) {
					pool.resetPeakUsage();
				}
			}
		}
		return most / 1_000_000;
	}

}
