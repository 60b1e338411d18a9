package org.leafward.care;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.climate.Observations;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;

import static org.assertj.core.api.Assertions.assertThat;

/** Derivations against the database: what is written, what is not, and what is noted. */
@SpringBootTest(properties = "spring.quartz.auto-startup=false")
@ContextConfiguration(initializers = TestDatabase.class)
class ReplanningTests {

	private static final GeoPoint POINT = new GeoPoint(45, -90, 200);

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
	private JdbcClient database;

	private SiteId site;

	@BeforeEach
	void plant() throws Exception {
		StationId station = new StationId("XX000000007");
		this.stations.register(new Station(station, "Made up", POINT, true));
		this.observations.load(station, new ByteArrayInputStream(record(station)), "record.csv");
		this.site = this.register
			.addSite(this.people.join("Ada", UUID.randomUUID() + "@example.org", ZoneId.of("America/Chicago")).id(),
					new NewSite("Garden", "", POINT, ZoneId.of("America/Chicago"), SoilTexture.LOAM, Sun.FULL_SUN,
							Wind.AVERAGE))
			.id();
		this.register.addPlantings(this.site, List.of(new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge", 3,
				LocalDate.of(2015, 5, 20), Placement.GROUND, false, false)));
	}

	@Test
	void aDerivationThatChangesNothingReadsNoTask() {
		assertThat(count("state = 'PLANNED'")).isPositive();
		// Were the tasks read, the missing ones would be written again.
		this.database.sql("delete from care.task where site = ?").param(this.site.value()).update();
		assertThat(this.replanning.derive(this.site)).hasValueSatisfying((diff) -> assertThat(diff.isEmpty()).isTrue());
		assertThat(count("true")).isZero();
		this.database.sql("delete from care.site_plan where site = ?").param(this.site.value()).update();
		assertThat(this.replanning.derive(this.site))
			.hasValueSatisfying((diff) -> assertThat(diff.added()).isNotEmpty());
		assertThat(this.replanning.derive(this.site)).hasValueSatisfying((diff) -> assertThat(diff.isEmpty()).isTrue());
	}

	@Test
	void whatIsWithdrawnAndComesBackKeepsItsIdentifierAndItsHistory() {
		List<UUID> before = ids("state = 'PLANNED'");
		this.database.sql("update register.planting set species = 'no-such-plant' where site = ?")
			.param(this.site.value())
			.update();
		this.replanning.derive(this.site);
		assertThat(ids("state = 'WITHDRAWN'")).isEqualTo(before);
		assertThat(ids("sequence = 1")).isEqualTo(before);
		this.database.sql("update register.planting set species = 'buxus-sempervirens' where site = ?")
			.param(this.site.value())
			.update();
		this.replanning.derive(this.site);
		assertThat(ids("state = 'PLANNED' and withdrawn_because is null and sequence = 2")).isEqualTo(before);
		assertThat(this.database.sql("""
				select from_state || ' ' || to_state from care.task_history where task = ? order by id
				""").param(before.get(0)).query(String.class).list()).containsExactly("PLANNED WITHDRAWN",
				"WITHDRAWN PLANNED");
	}

	@Test
	void theQueueIsWorkedOffAndTellsHowFarItIs() {
		Instant start = Instant.now().minusSeconds(2);
		this.replanning.askAll();
		ReplanProgress asked = this.replanning.progress(start);
		assertThat(asked.waiting()).isPositive();
		assertThat(asked.oldest()).isNotNull();
		assertThat(this.replanning.drain(Duration.ofMinutes(1))).isEqualTo((int) asked.waiting());
		ReplanProgress done = this.replanning.progress(start);
		assertThat(done.waiting()).isZero();
		assertThat(done.oldest()).isNull();
		assertThat(done.derived()).isGreaterThanOrEqualTo(asked.waiting());
	}

	@Test
	void aSiteThatFailsIsPutOffAndDoesNotStopTheOthers() {
		UUID broken = this.database
			.sql("""
					insert into register.site (id, owner, name, county, latitude, longitude, elevation_metres, zone, soil, sun,
						wind, created_at)
					select gen_random_uuid(), owner, 'broken', county, latitude, longitude, elevation_metres, 'No/Where', soil,
						sun, wind, created_at
					from register.site where id = ? returning id
					""")
			.param(this.site.value())
			.query(UUID.class)
			.single();
		this.replanning.ask(List.of(new SiteId(broken), this.site));
		assertThat(this.replanning.drain(Duration.ofMinutes(1))).isEqualTo(1);
		ReplanProgress left = this.replanning.progress(Instant.now());
		assertThat(left.failing()).isEqualTo(1);
		assertThat(left.lastError()).contains("No/Where");
		this.database.sql("delete from care.replan").update();
		this.database.sql("delete from register.site where id = ?").param(broken).update();
	}

	private List<UUID> ids(String condition) {
		return this.database.sql("select id from care.task where site = ? and " + condition + " order by id")
			.param(this.site.value())
			.query(UUID.class)
			.list();
	}

	private int count(String condition) {
		return ids(condition).size();
	}

	/** Twenty years with a freeze-free summer, made up. */
	static byte[] record(StationId station) {
		StringBuilder lines = new StringBuilder();
		Random random = new Random(7);
		for (LocalDate day = LocalDate.of(2004, 1, 1); day.getYear() < 2026; day = day.plusDays(1)) {
			double mean = 8 - 16 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 15) / 365.25)
					+ 3 * random.nextGaussian();
			String date = day.toString().replace("-", "");
			lines.append("%s,%s,TMIN,%d,,,7,\n".formatted(station.value(), date, Math.round(10 * (mean - 5))));
			lines.append("%s,%s,TMAX,%d,,,7,\n".formatted(station.value(), date, Math.round(10 * (mean + 5))));
		}
		return lines.toString().getBytes(StandardCharsets.UTF_8);
	}

}
