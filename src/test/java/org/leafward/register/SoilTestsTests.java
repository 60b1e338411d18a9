package org.leafward.register;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.leafward.plants.SpeciesId;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ContextConfiguration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Soil tests in a real PostgreSQL. */
@SpringBootTest
@ContextConfiguration(initializers = TestDatabase.class)
class SoilTestsTests {

	private static final SoilFigures FIGURES = new SoilFigures(8.8, 2.4, SoilExtract.ONE_TO_TWO, 28.0, null, 14.0);

	@Autowired
	private Register register;

	@Autowired
	private SoilTests tests;

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

	private KeptSoilTest keep(@Nullable PlantingId planting, LocalDate day) {
		return this.tests.keep(this.site, new NewSoilTest(planting, day, FIGURES, 15, SoilDrainage.SLOW, " report 7 "),
				this.owner);
	}

	@Test
	void theLatestOfTheSiteAndOfEachBedIsGivenAndAllAreListed() {
		PlantingId hedge = planting(this.site);
		KeptSoilTest old = keep(null, this.today.minusDays(300));
		KeptSoilTest whole = keep(null, this.today.minusDays(20));
		KeptSoilTest first = keep(hedge, this.today.minusDays(30));
		KeptSoilTest corrected = keep(hedge, this.today.minusDays(30));
		assertThat(whole.note()).isEqualTo("report 7");
		assertThat(whole.figures()).isEqualTo(FIGURES);
		assertThat(this.tests.latest(List.of(this.site, site()))).containsOnlyKeys(this.site);
		assertThat(this.tests.latest(List.of(this.site)).get(this.site)).containsExactlyInAnyOrder(whole, corrected);
		assertThat(this.tests.latest(this.site, 0, 3)).containsExactly(whole, corrected, first);
		assertThat(this.tests.latest(this.site, 1, 3)).containsExactly(old);
		this.register.removePlanting(hedge);
		assertThat(this.tests.latest(this.site, 0, 10)).containsExactly(whole, old);
	}

	@Test
	void aTestIsTakenBackOnlyFromItsOwnSite() {
		KeptSoilTest kept = keep(null, this.today);
		assertThatExceptionOfType(NotThere.class).isThrownBy(() -> this.tests.remove(site(), kept.id()));
		assertThat(this.tests.latest(this.site, 0, 10)).containsExactly(kept);
		this.tests.remove(this.site, kept.id());
		assertThat(this.tests.latest(this.site, 0, 10)).isEmpty();
		assertThatExceptionOfType(NotThere.class).isThrownBy(() -> this.tests.remove(this.site, kept.id()));
	}

	@ParameterizedTest
	@CsvSource({ "1.9, 2, 20, , 14, ph", "12.1, 2, 20, , 14, ph", "NaN, 2, 20, , 14, ph", "8, -0.1, 20, , 14, ec",
			"8, 100.1, 20, , 14, ec", "8, 2, 150.1, , 14, sar", "8, 2, , 70.1, 14, esp", "8, 2, , -1, 14, esp",
			"8, 2, 20, , 0.4, cec", "8, 2, 20, , 101, cec", "8, 2, , , 14, sar" })
	void figuresAreBounded(double ph, double ec, @Nullable Double sar, @Nullable Double esp, @Nullable Double cec,
			String field) {
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> new SoilFigures(ph, ec, SoilExtract.SATURATED_PASTE, sar, esp, cec))
			.satisfies((ex) -> assertThat(ex.byField()).containsOnlyKeys(field));
	}

	@Test
	void daysDepthsAndNumbersAreBounded() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> keep(null, this.today.plusDays(2)))
			.withMessageContaining("still to come");
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> keep(null, this.today.minusYears(5).minusDays(2)))
			.withMessageContaining("more than 5 years ago");
		keep(null, this.today.minusYears(5).plusDays(1));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> new NewSoilTest(null, this.today, FIGURES, 4, SoilDrainage.GOOD, "two\nlines"))
			.satisfies((ex) -> assertThat(ex.byField()).containsOnlyKeys("depth", "note"));
		for (int i = 0; i < 20; i++) {
			keep(null, this.today);
		}
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> keep(null, this.today))
			.withMessageContaining("at most 20");
		assertThatExceptionOfType(DataIntegrityViolationException.class)
			.isThrownBy(() -> this.database.sql("update register.soil_test set acidity = 13").update());
	}

	@Test
	void plantingsOfOtherSitesAndSitesThatAreNotThereAreRefused() {
		PlantingId other = planting(site());
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> keep(other, this.today))
			.withMessageContaining("not a planting of this site");
		NewSoilTest test = new NewSoilTest(null, this.today, FIGURES, 15, SoilDrainage.GOOD, "");
		assertThatExceptionOfType(NotThere.class)
			.isThrownBy(() -> this.tests.keep(new SiteId(UUID.randomUUID()), test, null));
	}

}
