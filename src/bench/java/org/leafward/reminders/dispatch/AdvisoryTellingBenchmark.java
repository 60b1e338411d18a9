package org.leafward.reminders.dispatch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.leafward.Application;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.AlertFacts;
import org.leafward.advisories.Area;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.Category;
import org.leafward.advisories.Certainty;
import org.leafward.advisories.PlantChoice;
import org.leafward.advisories.Response;
import org.leafward.advisories.Severity;
import org.leafward.advisories.Urgency;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.desk.Issuing;
import org.leafward.plants.Catalogue;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.reminders.store.AdvisoryTable;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;

/**
 * How long it takes to publish an advisory that concerns 100,000 people in the counties of
 * the demo: until publishing returns, until the rows of all are made, and the same for a
 * change of it once all were told. Targets: returns at once; the rest faster than
 * reminders leave (5,000 a second), so that making holds nothing up.
 */
public final class AdvisoryTellingBenchmark {

	private AdvisoryTellingBenchmark() {
	}

	/**
	 * Runs the benchmark and prints what it took.
	 * @param args number of people; 100000 by default
	 */
	public static void main(String[] args) throws Exception {
		int people = (args.length > 0) ? Integer.parseInt(args[0]) : 100_000;
		Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target")), "bench-telling")
			.toAbsolutePath();
		try (ConfigurableApplicationContext context = new SpringApplicationBuilder(Application.class).run(
				"--leafward.data-directory=" + folder, "--server.port=0", "--server.address=127.0.0.1",
				"--spring.quartz.auto-startup=false", "--logging.level.root=error", "--spring.mail.host=127.0.0.1",
				"--leafward.knowledge.directory=" + counties(folder))) {
			fill(context, people);
			measure(context, people);
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

	private static void fill(ConfigurableApplicationContext context, int people) {
		JdbcClient database = context.getBean(JdbcClient.class);
		List<County> counties = context.getBean(Regions.class).counties();
		String species = context.getBean(Catalogue.class).all().iterator().next().id().value();
		database.sql("""
				insert into accounts.person (id, name, email, zone, created_at, confirmed_at)
				select md5('p' || i)::uuid, 'P' || i, 'p' || i || '@example.org',
					(array['America/Chicago', 'America/New_York', 'Europe/Berlin'])[1 + i % 3], now(), now()
				from generate_series(1, ?) i
				""").param(people).update();
		database.sql("""
				insert into register.site (id, owner, name, county, region, latitude, longitude, elevation_metres, zone,
					soil, sun, wind, created_at)
				select md5('s' || i)::uuid, md5('p' || i)::uuid, 'Garden', (:counties::text[])[1 + i % :many],
					(:regions::text[])[1 + i % :many], 41, -91, 200, 'UTC', 'LOAM', 'FULL_SUN', 'AVERAGE', now()
				from generate_series(1, :people) i
				""")
			.param("counties", counties.stream().map(County::name).toArray(String[]::new))
			.param("regions", counties.stream().map(County::region).toArray(String[]::new))
			.param("many", counties.size())
			.param("people", people)
			.update();
		database.sql("""
				insert into register.planting (id, site, species, label, count, planted_on, placement, winters_indoors,
					salt_exposed, created_at)
				select gen_random_uuid(), md5('s' || i)::uuid, :species, 'plant', 1, date '2020-04-01', 'GROUND', false, false,
					now()
				from generate_series(1, :people) i
				""").param("species", species).param("people", people).update();
		database.sql("vacuum analyze").update();
	}

	private static void measure(ConfigurableApplicationContext context, int people) throws InterruptedException {
		Issuing issuing = context.getBean(Issuing.class);
		AdvisoryTelling telling = context.getBean(AdvisoryTelling.class);
		AdvisoryTable table = context.getBean(AdvisoryTable.class);
		JdbcClient database = context.getBean(JdbcClient.class);
		UUID advisory = UUID.randomUUID();
		Instant onset = Instant.now().plus(Duration.ofDays(2)).truncatedTo(ChronoUnit.SECONDS);
		Content content = content(onset, context.getBean(Regions.class).counties());
		for (MessageType type : List.of(MessageType.ALERT, MessageType.UPDATE)) {
			long begin = System.nanoTime();
			Message message = issuing.send(advisory, type, content,
					(type == MessageType.UPDATE) ? "It comes earlier." : null, new Issuing.Hands(null, null));
			double returned = (System.nanoTime() - begin) / 1e9;
			while (!table.making(new AdvisoryId(advisory))) {
				Thread.sleep(5);
			}
			double noted = (System.nanoTime() - begin) / 1e9;
			int rows = 0;
			while (table.making(new AdvisoryId(advisory))) {
				rows += telling.run();
			}
			double made = (System.nanoTime() - begin) / 1e9;
			System.out.printf(
					"ADVISORY message %d to %,d people: publishing returned after %.3f s, was noted after %.3f s, %,d rows after %.1f s, %,.0f rows/s%n",
					message.number(), people, returned, noted, rows, made, rows / (made - noted));
			// As if they had left.
			database.sql("update reminders.reminder set state = 'SENT' where advisory is not null").update();
			database.sql("vacuum analyze").update();
		}
	}

	private static Content content(Instant onset, List<County> counties) {
		return new Content(null, new Bilingual("Dry wind", "Viento seco"),
				new AlertFacts(Category.MET, Set.of(Response.PREPARE), Urgency.FUTURE, Severity.MODERATE,
						Certainty.LIKELY),
				Area.of(counties.stream().map(County::code).toList()), PlantChoice.EVERYTHING, Set.of("water"), onset,
				onset.plus(Duration.ofDays(2)), ZoneId.of("America/Chicago"),
				new AdvisoryText("Dry wind from Thursday on: water young trees", "Wind of 30 mph (13 m/s) and dry air.",
						"All counties.", "Thursday and Friday.", "Leaves scorch at their edges.",
						"Water deeply in the early morning, young trees first."),
				null);
	}

}
