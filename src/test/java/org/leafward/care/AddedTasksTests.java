package org.leafward.care;

import java.io.ByteArrayInputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.core.rule.Work;
import org.leafward.climate.Observations;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.PlantingId;
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
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** Tasks that another module adds, beside those of the rules. */
@SpringBootTest(properties = "spring.quartz.auto-startup=false")
@ContextConfiguration(initializers = TestDatabase.class)
class AddedTasksTests {

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static final GeoPoint POINT = new GeoPoint(45, -90, 200);

	private static final String DROPPED = "Something else was found.";

	@Autowired
	private AddedTasks added;

	@Autowired
	private TaskCalendar calendar;

	@Autowired
	private Replanning replanning;

	@Autowired
	private CareLog log;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private Stations stations;

	@Autowired
	private Observations observations;

	@Autowired
	private JdbcClient database;

	@Autowired
	private Clock clock;

	private final AddedFor origin = new AddedFor("case", UUID.randomUUID(), "/cases/one");

	private PersonId owner;

	private SiteId site;

	private PlantingId hedge;

	private LocalDate today;

	@BeforeEach
	void plant() throws Exception {
		StationId station = new StationId("XX000000007");
		this.stations.register(new Station(station, "Made up", POINT, true));
		this.observations.load(station, new ByteArrayInputStream(ReplanningTests.record(station)), "record.csv");
		this.today = LocalDate.ofInstant(this.clock.instant(), ZONE);
		this.owner = this.people.join("Ada", UUID.randomUUID() + "@example.org", ZONE).id();
		this.site = this.register
			.addSite(this.owner, new NewSite("Garden", "", POINT, ZONE, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		this.hedge = this.register
			.addPlantings(this.site, List.of(new NewPlanting(new SpeciesId("buxus-sempervirens"), "hedge", 3,
					LocalDate.of(2015, 5, 20), Placement.GROUND, false, false)))
			.get(0)
			.id();
	}

	private AddedTask water(int from, int to, String what) {
		return new AddedTask("water-deeply", this.today.getYear(), TaskKind.DO, Work.WATER,
				new DayWindow(this.today.plusDays(from), this.today.plusDays(to)),
				new TaskText("Water deeply", what, null, "The roots are dry.", null, null),
				Explanation.of("A case", "water deeply"));
	}

	private int put(AddedTask... tasks) {
		return this.added.put(this.origin, this.site, this.hedge, List.of(tasks), DROPPED);
	}

	private CareTask only() {
		List<TaskId> ids = this.added.of(this.origin.id());
		assertThat(ids).hasSize(1);
		return this.calendar.find(ids.get(0)).orElseThrow();
	}

	@Test
	void anAddedTaskStandsOnTheCalendarAndAskingAgainWritesNothing() {
		assertThat(put(water(1, 10, "Soak the roots."))).isEqualTo(1);
		CareTask task = only();
		assertThat(task.id()).isEqualTo(AddedTasks.idOf(this.origin, "water-deeply", this.today.getYear()));
		assertThat(task.added()).isTrue();
		assertThat(task.rule()).isEqualTo("case:water-deeply");
		assertThat(task.plant()).isEqualTo("hedge (common boxwood)");
		assertThat(this.calendar.ofPerson(this.owner, DayWindow.of(this.today.plusDays(3)))).contains(task);
		assertThat(this.calendar.explain(task.id())).contains(Explanation.of("A case", "water deeply"));
		assertThat(this.added.link(task.id())).contains("/cases/one");
		assertThat(put(water(1, 10, "Soak the roots."))).isZero();
		assertThat(only()).isEqualTo(task);
	}

	@Test
	void planningNeitherWithdrawsNorTouchesIt() {
		put(water(1, 10, "Soak the roots."));
		CareTask task = only();
		long rules = ofRules();
		assertThat(rules).isPositive();
		this.database.sql("delete from care.site_plan where site = ?").param(this.site.value()).update();
		assertThat(this.replanning.derive(this.site)).hasValueSatisfying((diff) -> assertThat(diff.isEmpty()).isTrue());
		// What the rules want is withdrawn with its species; the added one stands.
		this.database.sql("update register.planting set species = 'no-such-plant' where site = ?")
			.param(this.site.value())
			.update();
		this.replanning.derive(this.site);
		assertThat(ofRules()).isZero();
		assertThat(only()).isEqualTo(task);
	}

	private long ofRules() {
		return this.database
			.sql("select count(*) from care.task where site = ? and state = 'PLANNED' and added_for is null")
			.param(this.site.value())
			.query(Long.class)
			.single();
	}

	@Test
	void whatChangesRisesAndWhatIsNoLongerWantedIsWithdrawnUntilItIsAgain() {
		put(water(1, 10, "Soak the roots."));
		CareTask first = only();
		assertThat(put(water(2, 12, "Soak the roots."))).isEqualTo(1);
		CareTask moved = only();
		assertThat(moved.sequence()).isEqualTo(first.sequence() + 1);
		assertThat(moved.changedAt()).isAfter(first.changedAt());
		assertThat(put()).isEqualTo(1);
		assertThat(only().state()).isEqualTo(TaskState.WITHDRAWN);
		assertThat(only().withdrawnBecause()).isEqualTo(DROPPED);
		assertThat(put()).isZero();
		put(water(2, 12, "Soak the roots."));
		assertThat(only().state()).isEqualTo(TaskState.PLANNED);
		assertThat(only().id()).isEqualTo(first.id());
	}

	@Test
	void whatPeopleDidStaysAndGoesIntoTheCareLog() {
		put(water(0, 10, "Soak the roots."));
		this.log.done(List.of(only().id()), WorkDone.on(this.today, "40 litres"), this.owner);
		assertThat(put(water(3, 12, "Water twice."))).isZero();
		assertThat(put()).isZero();
		assertThat(only().state()).isEqualTo(TaskState.DONE);
		assertThat(this.log.of(only().id()))
			.hasValueSatisfying((entry) -> assertThat(entry.work()).isEqualTo(Work.WATER));
		this.log.undo(List.of(only().id()), this.owner);
		assertThat(only().state()).isEqualTo(TaskState.PLANNED);
	}

	@Test
	void itGoesWithItsPlanting() {
		put(water(1, 10, "Soak the roots."));
		this.register.removePlanting(this.hedge);
		assertThat(only().state()).isEqualTo(TaskState.WITHDRAWN);
		assertThat(only().withdrawnBecause()).isEqualTo("The planting is no longer in the register.");
	}

	@Test
	void whatIsOverIsNeitherAddedNorWithdrawn() {
		assertThat(put(water(-9, -2, "Soak the roots."))).isZero();
		put(water(1, 10, "Soak the roots."));
		this.database.sql("update care.task set from_day = ?, to_day = ? where id = ?")
			.params(this.today.minusDays(9), this.today.minusDays(2), only().id().value())
			.update();
		assertThat(put()).isZero();
		assertThat(put(water(1, 10, "Water twice."))).isZero();
		assertThat(only().state()).isEqualTo(TaskState.PLANNED);
	}

	@Test
	void whatCantStandIsRefused() {
		AddedTask twice = water(1, 2, "Soak the roots.");
		assertThatThrownBy(() -> put(twice, twice)).isInstanceOf(BadInput.class);
		assertThatThrownBy(
				() -> this.added.put(this.origin, this.site, new PlantingId(UUID.randomUUID()), List.of(), DROPPED))
			.isInstanceOf(BadInput.class);
		assertThatThrownBy(() -> new AddedFor("case", UUID.randomUUID(), "https://elsewhere.example"))
			.isInstanceOf(BadInput.class);
		assertThatThrownBy(() -> new AddedFor("a/b", UUID.randomUUID(), "/cases/one")).isInstanceOf(BadInput.class);
	}

}
