package org.leafward.care;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.amounts.Quantity;
import org.leafward.amounts.salt.Conductivity;
import org.leafward.amounts.salt.Drainage;
import org.leafward.amounts.salt.Extract;
import org.leafward.amounts.soiltest.SoilTest;
import org.leafward.amounts.soiltest.SoilTreatment;
import org.leafward.amounts.soiltest.TreatedBed;
import org.leafward.climate.core.water.TextureClass;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.NewSoilTest;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.PlantingSize;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTestId;
import org.leafward.register.SoilTests;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.SettableClock;
import org.leafward.support.StillServer;
import org.springframework.beans.factory.annotation.Autowired;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A kept soil test becomes tasks of its bed at once, and they go with it. Amounts are
 * held against the calculator, which is held against published tables in
 * {@code SoilTreatmentTests}.
 */
@StillServer
class SoilTasksTests {

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final LocalDate TODAY = LocalDate.of(2027, 4, 20);

	private static final LocalDate SAMPLED = TODAY.minusDays(10);

	@Autowired
	private Register register;

	@Autowired
	private SoilTests soilTests;

	@Autowired
	private People people;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private CareLog log;

	@Autowired
	private SettableClock clock;

	private PersonId owner;

	private SiteId site;

	private Planting hedge;

	private Planting border;

	private static Instant noon(LocalDate day) {
		return day.atTime(12, 0).atZone(ZONE).toInstant();
	}

	@BeforeEach
	void plant() {
		this.clock.set(noon(TODAY));
		this.owner = this.people.join("Ada", UUID.randomUUID() + "@example.org", ZONE).id();
		this.site = this.register
			.addSite(this.owner,
					new NewSite("Garden", "", new GeoPoint(45, -54, 200), ZONE, SoilTexture.LOAM, Sun.FULL_SUN,
							Wind.AVERAGE))
			.id();
		List<Planting> planted = this.register.addPlantings(this.site,
				List.of(planting("border", Placement.GROUND, PlantingSize.UNKNOWN),
						planting("hedge", Placement.GROUND, new PlantingSize(12.0, null, null)),
						planting("pot", Placement.CONTAINER, PlantingSize.UNKNOWN)));
		this.border = planted.stream().filter((one) -> one.label().equals("border")).findFirst().orElseThrow();
		this.hedge = planted.stream().filter((one) -> one.label().equals("hedge")).findFirst().orElseThrow();
	}

	private static NewPlanting planting(String label, Placement placement, PlantingSize size) {
		return new NewPlanting(new SpeciesId("buxus-sempervirens"), label, 3, LocalDate.of(2020, 5, 1), placement,
				false, false, size, null);
	}

	private SoilTestId keep(@Nullable PlantingId bed, LocalDate day, double ph, double conductivity, double percent) {
		return this.soilTests
			.keep(this.site,
					new NewSoilTest(bed, day,
							new SoilFigures(ph, conductivity, SoilExtract.SATURATED_PASTE, null, percent, 30.0), 15,
							SoilDrainage.GOOD, ""),
					this.owner)
			.id();
	}

	private List<CareTask> tasks(String rule) {
		return this.calendar.ofSite(this.site, new DayWindow(TODAY, TODAY.plusDays(500)))
			.stream()
			.filter((task) -> task.rule().equals("soil/" + rule) && task.state() != TaskState.WITHDRAWN)
			.toList();
	}

	private List<String> rules() {
		return this.calendar.ofSite(this.site, new DayWindow(TODAY, TODAY.plusDays(500)))
			.stream()
			.filter((task) -> task.rule().startsWith("soil/") && task.state() != TaskState.WITHDRAWN)
			.map((task) -> task.rule().substring(5))
			.distinct()
			.sorted()
			.toList();
	}

	@Test
	void aSodicBedIsToldToSpreadTheGypsumOfTheCalculatorInParts() {
		keep(this.hedge.id(), SAMPLED, 8.4, 8, 45);
		SoilTreatment calculator = SoilTreatment.of(
				new SoilTest(8.4, new Conductivity(8, Extract.SATURATED_PASTE, TextureClass.LOAM), 45, null, 30.0),
				new TreatedBed(12, 0.15, Drainage.GOOD), SoilTreatment.USUAL_ESP, 0.9);
		List<CareTask> gypsum = tasks("spread-gypsum");
		assertThat(gypsum).hasSameSizeAs(calculator.applications()).hasSize(3);
		for (int part = 0; part < gypsum.size(); part++) {
			assertThat(gypsum.get(part).planting()).isEqualTo(this.hedge.id());
			assertThat(gypsum.get(part).window().from()).isEqualTo(SAMPLED.plusDays(182L * part));
			assertThat(gypsum.get(part).text().amount()).contains(
					"About " + Quantity.kilograms(calculator.applications().get(part)) + " of gypsum",
					"part %d of 3".formatted(part + 1), Quantity.kilograms(calculator.kilograms()) + " in all",
					"50 mm (2 in)");
			assertThat(gypsum.get(part).text().caution()).contains("dust", "lift", "drinking water", "local advice");
		}
		assertThat(tasks("leach-after-gypsum")).singleElement()
			.satisfies((task) -> assertThat(task.text().amount()).isEqualTo(calculator.leaching().amount().words()));
		assertThat(this.calendar.explain(gypsum.get(0).id()).orElseThrow().toString())
			.contains("sample of Sat 10 Apr 2027", "Oster", "Handbook 60", "CEC times the way from 45.0 %");
		assertThat(rules()).containsExactly("leach-after-gypsum", "spread-gypsum", "test-again-after-gypsum");
	}

	@Test
	void aTestOfTheWholeSiteCountsForEachBedInTheGround() {
		keep(null, SAMPLED, 7.5, 8, 5);
		List<CareTask> leaching = tasks("leach-saline-soil");
		assertThat(leaching).extracting(CareTask::planting)
			.containsExactlyInAnyOrder(this.hedge.id(), this.border.id());
		assertThat(leaching).allSatisfy((task) -> assertThat(task.text().what()).contains("Gypsum does nothing"));
		assertThat(leaching).filteredOn((task) -> this.border.id().equals(task.planting()))
			.singleElement()
			.satisfies((task) -> assertThat(task.text().amount()).startsWith("For each square metre"));
		assertThat(rules()).containsExactly("leach-saline-soil", "test-again-after-leaching");
	}

	@Test
	void nothingIsSaidWhereTheSoilIsNormalAndNobodyTested() {
		assertThat(rules()).isEmpty();
		keep(null, SAMPLED, 7, 1, 5);
		assertThat(rules()).isEmpty();
	}

	@Test
	void takingTheTestBackOrANewOneWithdrawsWhatItAskedFor() {
		SoilTestId test = keep(this.hedge.id(), SAMPLED, 8.8, 2, 25);
		assertThat(tasks("spread-gypsum")).hasSize(2);
		this.soilTests.remove(this.site, test);
		assertThat(rules()).isEmpty();
		keep(this.hedge.id(), SAMPLED, 8.8, 2, 25);
		assertThat(tasks("spread-gypsum")).as("comes back").hasSize(2);
		keep(null, SAMPLED.plusDays(3), 7, 1, 5);
		assertThat(rules()).as("the later test of the whole site").isEmpty();
	}

	@Test
	void whatWasDoneAfterOneTestIsNoAnswerToTheNext() {
		keep(this.hedge.id(), SAMPLED, 8.8, 2, 20);
		this.log.done(List.of(tasks("spread-gypsum").get(0).id()), WorkDone.on(TODAY, ""), this.owner);
		LocalDate later = TODAY.plusDays(120);
		this.clock.set(noon(later));
		keep(this.hedge.id(), later.minusDays(5), 8.8, 2, 18);
		assertThat(tasks("spread-gypsum")).filteredOn((task) -> task.state() == TaskState.PLANNED)
			.singleElement()
			.satisfies((task) -> assertThat(task.window().from()).isEqualTo(later.minusDays(5)));
	}

}
