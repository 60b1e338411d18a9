package org.leafward.advisories;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.leafward.Application;
import org.leafward.accounts.PersonId;
import org.leafward.plants.Catalogue;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;

/**
 * Reach over a made-up register of 50,000 sites and 1,000,000 plantings in the counties of
 * the demo; target: counted within a second.
 */
public final class ReachBenchmark {

	private static final int ROUNDS = 9;

	private ReachBenchmark() {
	}

	/**
	 * Runs the benchmark and prints what it took.
	 * @param args number of sites and of plantings at each; 50000 and 20 by default
	 */
	public static void main(String[] args) throws Exception {
		int sites = (args.length > 0) ? Integer.parseInt(args[0]) : 50_000;
		int each = (args.length > 1) ? Integer.parseInt(args[1]) : 20;
		Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target")), "bench-reach");
		// A folder of its own with no people in it: the demo's counties without the demo.
		try (ConfigurableApplicationContext context = new SpringApplicationBuilder(Application.class).run(
				"--leafward.data-directory=" + folder, "--server.port=0", "--server.address=127.0.0.1",
				"--spring.quartz.auto-startup=false", "--logging.level.root=warn",
				"--leafward.knowledge.directory=" + counties(folder))) {
			fill(context, sites, each);
			measure(context);
		}
		finally {
			FileSystemUtils.deleteRecursively(folder);
		}
	}

	/** The invented counties count in the demo only, so here they are said to be real. */
	private static Path counties(Path folder) throws Exception {
		Path regions = Files.createDirectories(folder.resolve("knowledge").resolve("regions"));
		Files.writeString(regions.resolve("kestrel-basin.geojson"),
				Files.readString(Path.of("config/regions/kestrel-basin.geojson"))
					.replaceFirst("\"invented\"\\s*:\\s*true", "\"invented\": false"));
		return regions.getParent();
	}

	private static void fill(ConfigurableApplicationContext context, int sites, int each) {
		JdbcClient database = context.getBean(JdbcClient.class);
		List<County> counties = context.getBean(Regions.class).counties();
		String[] species = context.getBean(Catalogue.class)
			.all()
			.stream()
			.map((one) -> one.id().value())
			.toArray(String[]::new);
		long begin = System.nanoTime();
		database.sql("""
				insert into register.site (id, owner, name, county, region, latitude, longitude, elevation_metres, zone,
					soil, sun, wind, created_at)
				select gen_random_uuid(), gen_random_uuid(), 'Garden', (:counties::text[])[1 + i % :many],
					(:regions::text[])[1 + i % :many], 41, -91, 200, 'UTC', 'LOAM', 'FULL_SUN', 'AVERAGE', now()
				from generate_series(1, :sites) i
				""")
			.param("counties", counties.stream().map(County::name).toArray(String[]::new))
			.param("regions", counties.stream().map(County::region).toArray(String[]::new))
			.param("many", counties.size())
			.param("sites", sites)
			.update();
		database.sql("""
				insert into register.planting (id, site, species, label, count, planted_on, placement, winters_indoors,
					salt_exposed, created_at)
				select gen_random_uuid(), s.id, (:species::text[])[1 + floor(random() * :many)::int], 'plant', 1,
					date '2020-04-01', 'GROUND', false, false, now()
				from register.site s, generate_series(1, :each) j
				""").param("species", species).param("many", species.length).param("each", each).update();
		database.sql("vacuum analyze register.site_plants").update();
		System.out.printf("%d sites, %d plantings in %d counties, made up in %.0f s%n", sites, sites * each,
				counties.size(), (System.nanoTime() - begin) / 1e9);
		System.out.printf("table site_plants: %s with indexes%n",
				database.sql("select pg_size_pretty(pg_total_relation_size('register.site_plants'))")
					.query(String.class)
					.single());
	}

	private static void measure(ConfigurableApplicationContext context) {
		Growers growers = context.getBean(Growers.class);
		List<String> all = context.getBean(Regions.class).counties().stream().map(County::code).toList();
		PlantChoice evergreens = new PlantChoice(Set.of("evergreen"), Set.of("winter-burn-prone"), Set.of());
		System.out.println("PostgreSQL alone: " + String.join(" / ", context.getBean(JdbcClient.class)
			.sql("explain (analyze, timing off) select owner, county, plants::text from register.site_plants")
			.query(String.class)
			.list()));
		time("all counties, everything", () -> growers.count(all, PlantChoice.EVERYTHING));
		time("all counties, evergreens", () -> growers.count(all, evergreens));
		time("one county, evergreens", () -> growers.count(all.subList(0, 1), evergreens));
		long begin = System.nanoTime();
		int people = 0;
		int steps = 0;
		PersonId last = null;
		List<PersonId> step;
		do {
			step = growers.people(all, evergreens, last, 1_000);
			last = step.isEmpty() ? null : step.get(step.size() - 1);
			people += step.size();
			steps++;
		}
		while (!step.isEmpty());
		System.out.printf("going through %d people in %d steps of 1,000: %.2f s%n", people, steps,
				(System.nanoTime() - begin) / 1e9);
	}

	private static void time(String what, Supplier<Growth> count) {
		List<Double> seconds = new ArrayList<>();
		Growth growth = Growth.NONE;
		ThreadMXBean threads = ManagementFactory.getThreadMXBean();
		long processor = threads.getCurrentThreadCpuTime();
		for (int round = 0; round < ROUNDS; round++) {
			long begin = System.nanoTime();
			growth = count.get();
			seconds.add((System.nanoTime() - begin) / 1e9);
		}
		double first = seconds.get(0);
		Collections.sort(seconds);
		System.out.printf(
				"%s: %d people, %d sites, %d plantings; first %.3f s, median %.3f s, longest %.3f s; Java's processor %.3f s%n",
				what, growth.people(), growth.sites(), growth.plantings(), first, seconds.get(ROUNDS / 2),
				seconds.get(ROUNDS - 1), (threads.getCurrentThreadCpuTime() - processor) / 1e9 / ROUNDS);
	}

}
