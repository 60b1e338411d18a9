package org.leafward.platform.events;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
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
import org.springframework.beans.factory.config.AutowireCapableBeanFactory;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;

/** What a node left behind that was killed at work is done by another one. */
@SpringBootTest(properties = "spring.quartz.auto-startup=false")
@ContextConfiguration(initializers = TestDatabase.class)
class EventCareTests {

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private JdbcClient database;

	@Autowired
	private AutowireCapableBeanFactory beans;

	@ParameterizedTest
	@ValueSource(strings = { "PUBLISHED", "PROCESSING", "RESUBMITTED", "FAILED" })
	void whatADeadNodeLeftIsTakenUpAgain(String status) {
		SiteId site = planted();
		// As if the node had died before it planned anything.
		this.database.sql("delete from care.gap where site = ?").param(site.value()).update();
		this.database.sql("delete from care.site_plan where site = ?").param(site.value()).update();
		leave(site, status, 11);
		care();
		assertThat(gaps(site)).isPositive();
		assertThat(left(site)).isZero();
	}

	@ParameterizedTest
	@ValueSource(strings = { "PUBLISHED", "PROCESSING", "RESUBMITTED" })
	@DisabledIfSystemProperty(named = "leafward.days-ahead", matches = "[1-9].*",
			disabledReason = "PostgreSQL has the machine’s clock")
	void whatALivingNodeIsAtIsLeftAlone(String status) {
		SiteId site = planted();
		leave(site, status, 6);
		care();
		assertThat(left(site)).isOne();
		this.database.sql("delete from events.event_publication").update();
	}

	private void care() {
		this.beans.createBean(EventCare.class).execute(mock());
	}

	private SiteId planted() {
		PersonId owner = this.people.join("Ada", "ada@example.org", ZoneId.of("Europe/Berlin")).id();
		SiteId site = this.register
			.addSite(owner,
					new NewSite("Garden", "", new GeoPoint(52.5, 13.4, 40), ZoneId.of("Europe/Berlin"),
							SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		this.register.addPlantings(site, List.of(new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge", 1,
				LocalDate.of(2015, 4, 20), Placement.GROUND, false, false)));
		assertThat(gaps(site)).isPositive();
		return site;
	}

	private void leave(SiteId site, String status, int minutes) {
		this.database.sql("""
				insert into events.event_publication (id, listener_id, event_type, serialized_event,
					publication_date, status, completion_attempts, last_resubmission_date)
				values (?, 'care.plantings-changed', 'org.leafward.register.PlantingsChanged', ?,
					now() - make_interval(mins => ?), ?, 1, now() - make_interval(mins => ?))""")
			.params(UUID.randomUUID(), "{\"site\":\"%s\"}".formatted(site), minutes, status, minutes)
			.update();
	}

	private long gaps(SiteId site) {
		return this.database.sql("select count(*) from care.gap where site = ?")
			.param(site.value())
			.query(Long.class)
			.single();
	}

	private long left(SiteId site) {
		return this.database.sql("select count(*) from events.event_publication where serialized_event like ?")
			.param("%" + site + "%")
			.query(Long.class)
			.single();
	}

}
