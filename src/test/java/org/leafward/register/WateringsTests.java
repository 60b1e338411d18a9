package org.leafward.register;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.leafward.plants.SpeciesId;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

/** Waterings in a real PostgreSQL. */
@SpringBootTest
@ContextConfiguration(initializers = TestDatabase.class)
class WateringsTests {

	@Autowired
	private Register register;

	@Autowired
	private Waterings waterings;

	@Autowired
	private People people;

	@Autowired
	private JdbcClient database;

	private PersonId owner;

	private SiteId site;

	private LocalDate today;

	@BeforeEach
	void register() {
		this.owner = this.people.join("Ada", UUID.randomUUID() + "@example.org", ZoneId.of("UTC")).id();
		this.site = site();
		this.today = LocalDate.now(ZoneOffset.UTC);
	}

	private SiteId site() {
		return this.register
			.addSite(this.owner,
					new NewSite("Garden", "", new GeoPoint(52.5, 13.4, 40), ZoneId.of("UTC"), SoilTexture.LOAM,
							Sun.FULL_SUN, Wind.AVERAGE))
			.id();
	}

	private PlantingId planting(SiteId where) {
		return this.register
			.addPlantings(where, List.of(new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge", 1,
					LocalDate.of(2015, 4, 20), Placement.GROUND, false, false)))
			.get(0)
			.id();
	}

	private Watering record(PlantingId planting, LocalDate day, double millimetres) {
		return this.waterings.record(this.site, new NewWatering(planting, day, millimetres, " can "), this.owner);
	}

	@Test
	void aBedGetsItsOwnAndTheWholeSites() {
		PlantingId hedge = planting(this.site);
		LocalDate day = this.today.minusDays(3);
		Watering whole = record(null, day, 20);
		record(hedge, day, 5);
		record(hedge, day, 2.5);
		record(null, day.minusDays(10), 8);
		assertThat(whole.note()).isEqualTo("can");
		assertThat(whole.by()).isEqualTo(this.owner);
		assertThat(this.waterings.between(this.site, day, day)).hasSize(3).first().isEqualTo(whole);
		assertThat(this.waterings.depths(this.site, null, day.minusDays(20), this.today))
			.isEqualTo(Map.of(day, 20.0, day.minusDays(10), 8.0));
		assertThat(this.waterings.depths(this.site, hedge, day, day)).isEqualTo(Map.of(day, 27.5));
		assertThat(this.waterings.latest(this.site, 0, 1)).singleElement().extracting(Watering::day).isEqualTo(day);
		assertThat(this.waterings.latest(this.site, 1, 3)).singleElement()
			.extracting(Watering::millimetres)
			.isEqualTo(8.0);
		this.register.removePlanting(hedge);
		assertThat(this.waterings.depths(this.site, hedge, day, day)).isEqualTo(Map.of(day, 20.0));
	}

	@Test
	void aWateringIsTakenBackOnlyFromItsOwnSite() {
		Watering given = record(null, this.today, 10);
		assertThatExceptionOfType(NotThere.class).isThrownBy(() -> this.waterings.remove(site(), given.id()));
		assertThat(this.waterings.latest(this.site, 0, 10)).containsExactly(given);
		this.waterings.remove(this.site, given.id());
		assertThat(this.waterings.latest(this.site, 0, 10)).isEmpty();
		assertThatExceptionOfType(NotThere.class).isThrownBy(() -> this.waterings.remove(this.site, given.id()));
	}

	@ParameterizedTest
	@ValueSource(doubles = { 0, -1, 200.1, Double.NaN, Double.POSITIVE_INFINITY })
	void depthsAreBounded(double millimetres) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> record(null, this.today, millimetres))
			.satisfies((ex) -> assertThat(ex.where()).isEqualTo("amount"));
	}

	@Test
	void daysAndSumsAreBounded() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> record(null, this.today.plusDays(2), 1))
			.withMessageContaining("still to come");
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> record(null, this.today.minusYears(1).minusDays(2), 1))
			.withMessageContaining("more than a year ago");
		record(null, this.today.minusYears(1).plusDays(1), 1);
		record(null, this.today, 150);
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> record(null, this.today, 60))
			.withMessageContaining("150.0 mm that are recorded already");
		LocalDate busy = this.today.minusDays(1);
		for (int i = 0; i < 20; i++) {
			record(null, busy, 1);
		}
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> record(null, busy, 1))
			.withMessageContaining("at most 20");
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.waterings.between(this.site, busy.minusYears(5), busy));
	}

	@Test
	void plantingsOfOtherSitesAndSitesThatAreNotThereAreRefused() {
		PlantingId other = planting(site());
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> record(other, this.today, 5))
			.withMessageContaining("not a planting of this site");
		SiteId nowhere = new SiteId(UUID.randomUUID());
		assertThatExceptionOfType(NotThere.class)
			.isThrownBy(() -> this.waterings.record(nowhere, new NewWatering(null, this.today, 5, ""), null));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> new NewWatering(null, this.today, 500, "two\nlines"))
			.satisfies((ex) -> assertThat(ex.byField()).containsOnlyKeys("amount", "note"));
	}

	@Test
	void theTableKnowsTheBoundsToo() {
		record(null, this.today, 10);
		assertThatExceptionOfType(org.springframework.dao.DataIntegrityViolationException.class)
			.isThrownBy(() -> this.database.sql("update register.watering set millimetres = 201").update());
	}

	/**
	 * NIST Special Publication 811, appendix B.8: 1 in = 25.4 mm, 1 US gal = 3.785412 L,
	 * 1 ft² = 0.09290304 m². So 0.623 gallons on a square foot are an inch.
	 */
	@Test
	void unitsBecomeDepths() {
		assertThat(WaterUnit.MM.millimetres(12, 0)).isEqualTo(12);
		assertThat(WaterUnit.INCHES.millimetres(1, 0)).isEqualTo(25.4);
		assertThat(WaterUnit.LITRES.millimetres(200, 10)).isEqualTo(20);
		assertThat(WaterUnit.GALLONS.millimetres(62.3, 100)).isCloseTo(25.4, within(0.02));
		assertThat(WaterUnit.GALLONS.millimetres(1, 1)).isCloseTo(3.785412 / 0.09290304, within(1e-4));
	}

}
