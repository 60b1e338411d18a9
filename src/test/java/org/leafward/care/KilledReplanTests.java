package org.leafward.care;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.Application;
import org.leafward.accounts.People;
import org.leafward.climate.Observations;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.measure.GeoPoint;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

/** A node is killed while it replans; another one goes on, and nothing is lost. */
@DisabledIfSystemProperty(named = "leafward.days-ahead", matches = "[1-9].*",
		disabledReason = "the other process has the machine’s clock")
// The name gives it a database of its own: it counts all sites.
@SpringBootTest(properties = { "spring.quartz.auto-startup=false", "leafward.test=killed-replan" })
@ContextConfiguration(initializers = TestDatabase.class)
class KilledReplanTests {

	/** Four batches. */
	private static final int SITES = 100;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private Stations stations;

	@Autowired
	private Observations observations;

	@Autowired
	private Replanning replanning;

	@Autowired
	private Environment environment;

	@Autowired
	private JdbcClient database;

	@TempDir
	private Path folder;

	@Test
	void anotherNodeGoesOn() throws Exception {
		GeoPoint point = new GeoPoint(45, -90, 200);
		StationId station = new StationId("XX000000007");
		this.stations.register(new Station(station, "Made up", point, true));
		this.observations.load(station, days());
		// Its listener drains as well, and would do what is left for the other node.
		await().atMost(Duration.ofMinutes(1))
			.until(() -> this.database
				.sql("select count(*) from events.event_publication where completion_date is null")
				.query(Long.class)
				.single() == 0);
		fill();
		Instant start = Instant.now().minusSeconds(1);
		this.replanning.askAll();
		assertThat(waiting()).isEqualTo(SITES);

		Process other = otherNode();
		// Some batches are done, some begun, the rest waits.
		await().atMost(Duration.ofMinutes(3))
			.pollInterval(Duration.ofMillis(20))
			.until(() -> this.replanning.progress(start).derived() > 0 || !other.isAlive());
		assertThat(other.isAlive()).as("log in %s", this.folder).isTrue();
		other.destroyForcibly();
		assertThat(other.waitFor(20, TimeUnit.SECONDS)).isTrue();
		long done = this.replanning.progress(start).derived();
		// What it had begun comes back when PostgreSQL notices that it is gone.
		await().atMost(Duration.ofSeconds(30)).until(() -> waiting() + derived(start) == SITES);
		long left = waiting();
		assertThat(left).as("killed in the middle, after %d sites", done).isPositive();

		assertThat(this.replanning.drain(Duration.ofMinutes(5))).isEqualTo((int) left);
		assertThat(waiting()).isZero();
		assertThat(derived(start)).isEqualTo(SITES);
		assertThat(this.database.sql("select count(distinct site) from care.task").query(Long.class).single())
			.isEqualTo(SITES);
		// A derivation that knows of no fingerprint finds each site as it should be.
		this.database.sql("delete from care.site_plan").update();
		for (SiteId site : this.register.idsAfter(null, SITES)) {
			assertThat(this.replanning.derive(site))
				.hasValueSatisfying((diff) -> assertThat(diff.isEmpty()).as("%s", site).isTrue());
		}
	}

	private long waiting() {
		return this.replanning.progress(Instant.now()).waiting();
	}

	private long derived(Instant since) {
		return this.replanning.progress(since).derived();
	}

	/** Straight into the tables, so that nothing is planned yet. */
	private void fill() {
		UUID owner = this.people.join("Ada", "ada@example.org", ZoneId.of("America/Chicago")).id().value();
		this.database
			.sql("""
					insert into register.site (id, owner, name, county, latitude, longitude, elevation_metres, zone, soil, sun,
						wind, created_at)
					select gen_random_uuid(), ?, 'Garden ' || i, '', 45, -90, 200 + i, 'America/Chicago', 'LOAM', 'FULL_SUN',
						'AVERAGE', now()
					from generate_series(1, ?) i
					""")
			.params(owner, SITES)
			.update();
		for (String species : List.of("buxus-sempervirens", "quercus-rubra", "solanum-lycopersicum")) {
			this.database
				.sql("""
						insert into register.planting (id, site, species, label, count, planted_on, placement, winters_indoors,
							salt_exposed, created_at)
						select gen_random_uuid(), id, ?, 'bed', 3, '2020-05-01', 'GROUND', false, false, now() from register.site
						""")
				.param(species)
				.update();
		}
	}

	private Process otherNode() throws Exception {
		ProcessBuilder builder = new ProcessBuilder(ProcessHandle.current().info().command().orElse("java"), "-Xmx512m",
				"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"),
				Node.class.getName(),
				"--spring.datasource.url=" + this.environment.getRequiredProperty("spring.datasource.url"),
				"--spring.datasource.username=postgres", "--spring.datasource.password=",
				"--spring.datasource.hikari.maximum-pool-size=4", "--spring.quartz.auto-startup=false",
				"--leafward.data-directory=" + this.folder, "--server.port=0", "--server.address=127.0.0.1");
		return builder.redirectErrorStream(true).redirectOutput(this.folder.resolve("node.log").toFile()).start();
	}

	/** Twenty-two years with a freeze-free summer, made up. */
	private static List<ObservedDay> days() {
		return LocalDate.of(2004, 1, 1).datesUntil(LocalDate.of(2026, 1, 1)).map((day) -> {
			double mean = 8 - 16 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 15) / 365.25) + day.toEpochDay() % 5;
			return new ObservedDay(day, (int) Math.round(10 * (mean - 5)), (int) Math.round(10 * (mean + 5)), null,
					null, null);
		}).toList();
	}

	/** A server process that works the queue off until it is killed. */
	static final class Node {

		private Node() {
		}

		public static void main(String[] arguments) {
			ConfigurableApplicationContext context = new SpringApplicationBuilder(Application.class).run(arguments);
			context.getBean(Replanning.class).drain(Duration.ofMinutes(10));
		}

	}

}
