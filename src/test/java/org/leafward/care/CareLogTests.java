package org.leafward.care;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.core.state.TaskStanding;
import org.leafward.climate.Observations;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Watering;
import org.leafward.register.Waterings;
import org.leafward.register.Wind;
import org.leafward.support.SettableClock;
import org.leafward.support.StillServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** What people did and saw, against the database, with the shipped rules. */
@StillServer
class CareLogTests {

	private static final GeoPoint POINT = new GeoPoint(45, -82, 200);

	private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);

	private static final String AFTER_BLOOM = "shrubs/prune-after-bloom";

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
	private TaskCalendar calendar;

	@Autowired
	private CareLog log;

	@Autowired
	private PhenologyLog phenology;

	@Autowired
	private TaskStates states;

	@Autowired
	private Waterings waterings;

	@Autowired
	private JdbcClient database;

	@Autowired
	private SettableClock clock;

	private PersonId ada;

	private SiteId site;

	private PlantingId lilac;

	@BeforeEach
	void plant() throws Exception {
		this.clock.set(Instant.parse(TODAY + "T18:00:00Z"));
		StationId station = new StationId("XX000000108");
		this.stations.register(new Station(station, "Made up", POINT, true));
		this.observations.load(station, new ByteArrayInputStream(record(station)), "record.csv");
		this.ada = this.people.join("Ada", UUID.randomUUID() + "@example.org", ZoneId.of("America/Chicago")).id();
		this.site = this.register
			.addSite(this.ada,
					new NewSite("Garden", "", POINT, ZoneId.of("America/Chicago"), SoilTexture.LOAM, Sun.FULL_SUN,
							Wind.AVERAGE))
			.id();
		this.lilac = this.register
			.addPlantings(this.site, List.of(new NewPlanting(new SpeciesId("syringa-vulgaris"), "lilac", 1,
					LocalDate.of(2010, 5, 20), Placement.GROUND, false, false)))
			.get(0)
			.id();
	}

	@Test
	void whatIsDoneIsNeverMovedAndAnUndoBringsItBackIntoThePlan() {
		CareTask task = task(AFTER_BLOOM, 2026);
		Logged logged = this.log.done(List.of(task.id()), WorkDone.on(TODAY, "a third of the old wood"), this.ada)
			.get(0);
		assertThat(logged.remarks()).isEmpty();
		assertThat(logged.entry().work().code()).isEqualTo("prune");
		CareTask done = task(AFTER_BLOOM, 2026);
		assertThat(done.state()).isEqualTo(TaskState.DONE);
		assertThat(done.sequence()).isEqualTo(task.sequence() + 1);
		assertThat(done.changedAt()).isAfter(task.changedAt());
		this.phenology.observe(this.site, bloomEnd(TODAY.minusDays(1)), this.ada);
		this.replanning.derive(this.site);
		assertThat(task(AFTER_BLOOM, 2026)).isEqualTo(done);
		this.log.undo(List.of(task.id()), this.ada);
		CareTask back = task(AFTER_BLOOM, 2026);
		assertThat(back.state()).isEqualTo(TaskState.PLANNED);
		assertThat(back.window()).as("the plan of today, in the same transaction")
			.isEqualTo(new DayWindow(TODAY.minusDays(1), TODAY.plusDays(20)));
		assertThat(this.log.latest(this.site, null, 0, 10)).isEmpty();
		assertThat(history(task)).containsExactly("PLANNED DONE", "DONE PLANNED");
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> this.log.undo(List.of(task.id()), this.ada))
			.withMessageContaining("nothing to take back");
	}

	@Test
	void aPhaseThatWasSeenMovesTheDatesAtOnceAndBack() {
		DayWindow estimated = task(AFTER_BLOOM, 2026).window();
		LocalDate seen = TODAY.minusDays(1);
		assertThat(estimated.from()).isNotEqualTo(seen);
		Observation entry = this.phenology.observe(this.site, bloomEnd(seen), this.ada);
		assertThat(entry.season()).isEqualTo(2026);
		assertThat(task(AFTER_BLOOM, 2026).window()).isEqualTo(new DayWindow(seen, seen.plusDays(21)));
		assertThat(this.calendar.explain(task(AFTER_BLOOM, 2026).id()).toString()).contains("Observed here: bloom end");
		this.phenology.remove(this.site, entry.id(), this.ada);
		assertThat(task(AFTER_BLOOM, 2026).window()).isEqualTo(estimated);
		assertThat(this.phenology.latest(this.site, 0, 10)).isEmpty();
	}

	@Test
	void aTaskThatIsSkippedAndThenDoneGoesBackStepByStep() {
		CareTask task = task(AFTER_BLOOM, 2026);
		this.log.skip(List.of(task.id()), "The ladder is broken", this.ada);
		assertThat(now(task).words()).isEqualTo("Left out this time: The ladder is broken.");
		this.log.done(List.of(task.id()), WorkDone.on(TODAY.minusDays(1), ""), this.ada);
		assertThat(now(task).standing()).isEqualTo(TaskStanding.DONE);
		assertThat(now(task).words()).isEqualTo("Done on Tue 19 May 2026.");
		this.log.undo(List.of(task.id()), this.ada);
		assertThat(now(task).words()).isEqualTo("Left out this time: The ladder is broken.");
		this.log.undo(List.of(task.id()), this.ada);
		assertThat(now(task).standing()).isIn(TaskStanding.DUE, TaskStanding.PLANNED);
		assertThat(task(AFTER_BLOOM, 2026).withdrawnBecause()).isNull();
	}

	@Test
	void workInsideAHoldOffIsKeptAndMarked() {
		this.clock.set(Instant.parse("2026-08-20T18:00:00Z"));
		LocalDate day = LocalDate.of(2026, 8, 19);
		Logged logged = this.log.log(this.site, this.lilac, "prune", WorkDone.on(day, "shaped it"), this.ada);
		assertThat(logged.remarks()).singleElement()
			.asString()
			.startsWith("It is kept, and marked: “Don't prune; the flower buds are set” asks for no pruning from")
			.endsWith("Every cut takes flowers away.");
		LogEntry entry = this.log.latest(this.site, this.lilac, 0, 10).get(0);
		assertThat(entry.insideHoldOff()).isEqualTo(task("shrubs/spring-bloomers-no-pruning", 2026).id());
		assertThat(entry.holdOff()).isEqualTo("Don't prune; the flower buds are set");
		Logged other = this.log.log(this.site, this.lilac, "mulch", WorkDone.on(day, ""), this.ada);
		assertThat(other.entry().insideHoldOff()).isNull();
		this.log.remove(this.site, entry.id(), this.ada);
		assertThat(this.log.latest(this.site, this.lilac, 0, 10)).extracting(LogEntry::id)
			.containsExactly(other.entry().id());
	}

	@Test
	void aWateringIsWrittenThroughToTheWaterBalanceAndTakenBackWithTheEntry() {
		WorkDone gallons = new WorkDone(TODAY, 60.0, AmountUnit.GALLONS, 100.0, "by can\nin the evening");
		LogEntry entry = this.log.log(this.site, this.lilac, "water", gallons, this.ada).entry();
		Watering watering = this.waterings.latest(this.site, 0, 10).get(0);
		// 60 US gallons of 231 cubic inches over 100 square feet of 144 square inches.
		assertThat(watering.millimetres()).isCloseTo(60 * 231 / (100 * 144.0) * 25.4,
				org.assertj.core.data.Offset.offset(1e-9));
		assertThat(watering.id().value()).isEqualTo(entry.id().value());
		assertThat(watering.note()).isEqualTo("by can in the evening");
		this.log.remove(this.site, entry.id(), this.ada);
		assertThat(this.waterings.latest(this.site, 0, 10)).isEmpty();
		Logged noArea = this.log.log(this.site, this.lilac, "water",
				new WorkDone(TODAY, 60.0, AmountUnit.GALLONS, null, ""), this.ada);
		assertThat(noArea.remarks()).singleElement().asString().contains("in the log only");
		assertThat(this.waterings.latest(this.site, 0, 10)).isEmpty();
	}

	@Test
	void tooMuchWaterIsRefusedAndNothingIsKept() {
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.log.log(this.site, null, "water",
					new WorkDone(TODAY, 300.0, AmountUnit.MM, null, ""), this.ada))
			.withMessageContaining("outside 0 to 200");
		assertThat(this.log.latest(this.site, null, 0, 10)).isEmpty();
	}

	@Test
	void aHoldOffCantBeDone() {
		CareTask hold = task("shrubs/spring-bloomers-no-pruning", 2026);
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.log.done(List.of(hold.id()), WorkDone.on(TODAY, ""), this.ada))
			.withMessageContaining("A hold-off asks for nothing");
		assertThat(history(hold)).isEmpty();
	}

	@Test
	void daysNamesAndNotesHaveBounds() {
		refused("day", () -> log("prune", TODAY.plusDays(1), ""));
		refused("day", () -> log("prune", TODAY.minusYears(1).minusDays(1), ""));
		refused("work", () -> log("dance", TODAY, ""));
		refused("note", () -> log("prune", TODAY, "x".repeat(2001)));
		refused("reason", () -> this.log.skip(List.of(task(AFTER_BLOOM, 2026).id()), " ", this.ada));
		refused("name", () -> this.phenology.observe(this.site,
				new NewObservation(this.lilac, Observation.Kind.PHASE, "no-such-phase", TODAY), this.ada));
		refused("planting", () -> this.phenology.observe(this.site,
				new NewObservation(null, Observation.Kind.PHASE, "bloom-end", TODAY), this.ada));
		refused("planting", () -> this.log.log(this.site, new PlantingId(UUID.randomUUID()), "prune",
				WorkDone.on(TODAY, ""), this.ada));
		log("prune", TODAY.minusYears(1), "x".repeat(2000));
		assertThat(this.log.latest(this.site, null, 0, 10)).hasSize(1);
	}

	@Test
	void aStrangerFindsNothing() {
		PersonId bob = this.people.join("Bob", UUID.randomUUID() + "@example.org", ZoneId.of("America/Chicago")).id();
		CareTask task = task(AFTER_BLOOM, 2026);
		LogEntry entry = log("prune", TODAY, "");
		for (Runnable attempt : List.<Runnable>of(() -> this.log.done(List.of(task.id()), WorkDone.on(TODAY, ""), bob),
				() -> this.log.skip(List.of(task.id()), "no", bob), () -> this.log.undo(List.of(task.id()), bob),
				() -> this.log.log(this.site, null, "prune", WorkDone.on(TODAY, ""), bob),
				() -> this.log.remove(this.site, entry.id(), bob),
				() -> this.phenology.observe(this.site, bloomEnd(TODAY), bob))) {
			assertThatExceptionOfType(NotThere.class).isThrownBy(attempt::run);
		}
		assertThat(task(AFTER_BLOOM, 2026)).isEqualTo(task);
		assertThat(this.log.latest(this.site, null, 0, 10)).hasSize(1);
	}

	private LogEntry log(String work, LocalDate day, String note) {
		return this.log.log(this.site, this.lilac, work, WorkDone.on(day, note), this.ada).entry();
	}

	private static void refused(String where, Runnable attempt) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(attempt::run)
			.satisfies((refusal) -> assertThat(refusal.where()).isEqualTo(where));
	}

	private NewObservation bloomEnd(LocalDate day) {
		return new NewObservation(this.lilac, Observation.Kind.PHASE, "bloom-end", day);
	}

	private TaskNow now(CareTask task) {
		return this.states.of(List.of(this.calendar.find(task.id()).orElseThrow())).get(task.id());
	}

	private CareTask task(String rule, int season) {
		return this.calendar.ofSeason(this.site, season)
			.stream()
			.filter((task) -> task.rule().equals(rule))
			.findFirst()
			.orElseThrow();
	}

	private List<String> history(CareTask task) {
		return this.database
			.sql("select from_state || ' ' || to_state from care.task_history where task = ? order by id")
			.param(task.id().value())
			.query(String.class)
			.list();
	}

	/** Twenty years with a freeze-free summer, made up. */
	private static byte[] record(StationId station) {
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
