package org.leafward;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
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
import static org.awaitility.Awaitility.await;

/** Many changes at once must not use up the connections that each of them still needs. */
@SpringBootTest(properties = "spring.datasource.hikari.connection-timeout=5000")
@ContextConfiguration(initializers = TestDatabase.class)
class ParallelChangesTests {

	/** More than the pool has connections. */
	private static final int CHANGES = 24;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private JdbcClient database;

	@Test
	void plantingsThatComeTogetherAreAllSavedAndAllPlanned() throws Exception {
		PersonId owner = this.people.join("Ada", "ada@example.org", ZoneId.of("Europe/Berlin")).id();
		SiteId one = site(owner);
		assertSavedAndPlanned(Collections.nCopies(CHANGES, one));
		List<SiteId> several = new ArrayList<>();
		for (int i = 0; i < CHANGES; i++) {
			several.add(site(owner));
		}
		assertSavedAndPlanned(several);
		await().atMost(Duration.ofSeconds(20))
			.untilAsserted(() -> assertThat(count("select count(*) from events.event_publication")).isZero());
	}

	private SiteId site(PersonId owner) {
		return this.register
			.addSite(owner,
					new NewSite("Garden", "", new GeoPoint(52.5, 13.4, 40), ZoneId.of("Europe/Berlin"),
							SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
	}

	private void assertSavedAndPlanned(List<SiteId> sites) throws Exception {
		ExecutorService threads = Executors.newFixedThreadPool(CHANGES);
		try {
			List<Future<UUID>> changes = new ArrayList<>();
			for (SiteId site : sites) {
				changes.add(threads.submit(() -> plant(site)));
			}
			for (Future<UUID> change : changes) {
				UUID planting = change.get();
				// No station is near: every rule that applies leaves a gap at once.
				assertThat(this.database.sql("select count(*) from care.gap where planting = ?")
					.param(planting)
					.query(Long.class)
					.single()).as("planned when the change returns").isPositive();
			}
		}
		finally {
			threads.shutdownNow();
		}
	}

	private UUID plant(SiteId site) {
		return this.register
			.addPlantings(site, List.of(new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge", 1,
					LocalDate.of(2015, 4, 20), Placement.GROUND, false, false)))
			.get(0)
			.id()
			.value();
	}

	private long count(String sql) {
		return this.database.sql(sql).query(Long.class).single();
	}

}
