package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.care.TaskKind;
import org.leafward.care.core.plan.PlannedTask.Call;
import org.leafward.care.core.phase.Estimate;
import org.leafward.care.core.phase.Phase;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Bounds;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.Condition;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.Days;
import org.leafward.care.core.rule.EventAnchor;
import org.leafward.care.core.rule.Freezing;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Variant;
import org.leafward.care.core.rule.Weather;
import org.leafward.care.core.rule.Where;
import org.leafward.care.core.rule.Work;
import org.leafward.care.core.rule.YearsSincePlanting;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.plants.SpeciesId;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteFeature;
import org.leafward.register.SoilTexture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.care.core.plan.PlanFixture.FALL;
import static org.leafward.care.core.plan.PlanFixture.GROUND;
import static org.leafward.care.core.plan.PlanFixture.SPRING;
import static org.leafward.care.core.plan.PlanFixture.THAW;
import static org.leafward.care.core.plan.PlanFixture.markers;
import static org.leafward.care.core.plan.PlanFixture.on;
import static org.leafward.care.core.plan.PlanFixture.pack;
import static org.leafward.care.core.plan.PlanFixture.rule;

/**
 * The fuller language, as the schema of rule packs describes it, on the dates of
 * {@link PlanFixture}.
 */
class LanguageTests {

	private static final Condition MOIST = new Condition("root-zone-moist", null, 0);

	private static final Condition COLD = new Condition("low-ahead", "34F", 0);

	private static final Span FALL_DAYS = new Span(on(FALL, 0), on(FALL, 30), 0, 1);

	@Test
	void aHoldOffLeavesTheLongerSideOfADo() {
		// 20 August to 10 December; what is left of 1 July to 1 September ends before.
		Rule hold = rule("hold", TaskKind.HOLD_OFF, new Span(on(FALL, -56), on(GROUND, 0), 0, 1));
		Rule shear = rule("shear", TaskKind.DO, new Span(on(SPRING, 72), on(FALL, -44), 0, 1));
		assertThat(task(plan(hold, shear), "test/shear")).satisfies((task) -> {
			assertThat(task.window()).isEqualTo(window("2027-07-01", "2027-08-19"));
			assertThat(task.explanation().steps()).extracting(Explanation::label)
				.containsExactly("Rule", "Begins", "Ends", "Kept out of a hold-off",
						"Common practice, no single source");
		});
		assertThat(task(plan(hold, shear), "test/hold").window()).isEqualTo(window("2027-08-20", "2027-12-10"));
	}

	@Test
	void aDoInsideAHoldOffIsAGapWithTheReason() {
		Rule hold = rule("hold", TaskKind.HOLD_OFF, new Span(on(FALL, -56), on(GROUND, 0), 0, 1));
		Plan plan = plan(hold, rule("shear", TaskKind.DO, FALL_DAYS));
		assertThat(plan.tasks()).extracting(PlannedTask::rule).containsExactly("test/hold");
		assertThat(plan.gaps()).singleElement()
			.satisfies((gap) -> assertThat(gap.reason()).contains("Do hold").contains("test/hold"));
	}

	@Test
	void aDoGoesBeforeTheHoldOffThatItNamesAndThatOfOtherWork() {
		Rule hold = rule("hold", TaskKind.HOLD_OFF, new Span(on(FALL, -56), on(GROUND, 0), 0, 1));
		Rule despite = rule("broken", TaskKind.DO, Work.PRUNE, FALL_DAYS, Weather.ANY, Set.of("test/hold"), List.of());
		Rule water = rule("water", TaskKind.DO, Work.WATER, FALL_DAYS, Weather.ANY, Set.of(), List.of());
		Plan plan = plan(hold, despite, water);
		assertThat(task(plan, "test/broken")).satisfies((task) -> {
			assertThat(task.window()).isEqualTo(window("2027-10-15", "2027-11-14"));
			assertThat(task.explanation().steps()).extracting(Explanation::label).contains("Goes before a hold-off");
		});
		assertThat(task(plan, "test/water").window()).isEqualTo(window("2027-10-15", "2027-11-14"));
	}

	@Test
	void anObservedPhaseGoesBeforeTheEstimate() {
		Rule rule = rule("prune", TaskKind.DO, new Span(new PhaseAnchor("bud-break", Days.of(-14), false, Bounds.NONE),
				new PhaseAnchor("bud-break", Days.NONE, false, Bounds.NONE), 0, 1));
		assertThat(plan(rule).gaps()).singleElement()
			.satisfies((gap) -> assertThat(gap.reason()).contains("bud break").contains("common boxwood"));
		Phenology estimates = new Phenology(List.of(new Phase("bud-break", "bud break", "Buds show green.",
				List.of(new Estimate(Concern.ANY_PLANT, on(THAW, 30), rule.sources())))), List.of());
		Planner planner = new Planner(List.of(pack(rule)), estimates);
		PlannedTask estimated = planner
			.plan(PlanFixture.site(markers()), List.of(PlanFixture.boxwoodPlantedOn("2015-04-01")), one(),
					day("2027-06-01"))
			.tasks()
			.get(0);
		assertThat(estimated.window()).isEqualTo(window("2027-03-21", "2027-04-04"));
		PlannedTask seen = planner
			.plan(PlanFixture.site(markers(), saw("2027-04-20"), WeatherAnswers.UNKNOWN),
					List.of(PlanFixture.boxwoodPlantedOn("2015-04-01")), one(), day("2027-06-01"))
			.tasks()
			.get(0);
		assertThat(seen.window()).isEqualTo(window("2027-04-06", "2027-04-20"));
		assertThat(seen.id()).isEqualTo(estimated.id());
	}

	@Test
	void anEventThatNobodyLoggedGivesNoTaskAndNoGap() {
		EventAnchor wound = new EventAnchor("oak-wound", Days.NONE);
		Rule rule = rule("paint", TaskKind.DO, new Span(wound, new EventAnchor("oak-wound", Days.of(3)), 0, 1));
		assertThat(plan(rule)).isEqualTo(Plan.NOTHING);
		Plan plan = PlanFixture.planner(pack(rule))
			.plan(PlanFixture.site(markers(), saw("2027-05-02"), WeatherAnswers.UNKNOWN),
					List.of(PlanFixture.boxwoodPlantedOn("2015-04-01")), one(), day("2027-05-03"));
		assertThat(plan.tasks()).extracting(PlannedTask::window).containsExactly(window("2027-05-02", "2027-05-05"));
	}

	/** SPRING is 20 April, THAW 5 March; SOIL has no date here. */
	@ParameterizedTest
	@CsvSource({ "SPRING, 0, 2027-04-20", "SPRING, -60, 2027-03-05", "SPRING, 7, 2027-04-27", "SOIL, 0, 2027-03-05" })
	void aDateWaitsForASecondEventThatHasOne(String other, int days, String from) {
		MarkerKey soil = PlanFixture.key(MarkerKind.SOIL_WARMS_TO, "60F", 50);
		MarkerAnchor floor = on("SOIL".equals(other) ? soil : SPRING, days);
		Rule rule = rule("set-out", TaskKind.DO,
				new Span(new MarkerAnchor(THAW, Days.NONE, false, Bounds.NONE, floor), on(SPRING, 30), 0, 1));
		PlannedTask task = task(plan(rule), "test/set-out");
		assertThat(task.window()).isEqualTo(window(from, "2027-05-20"));
	}

	/** THAW is 5 March, SPRING 20 April, FALL 25 October; SOIL has no date here. */
	@Test
	void aDateWaitsForAThirdEventPastOneWithoutADate() {
		MarkerAnchor third = on(SPRING, 3);
		MarkerAnchor second = new MarkerAnchor(PlanFixture.key(MarkerKind.SOIL_WARMS_TO, "60F", 50), Days.NONE, false,
				Bounds.NONE, third);
		Rule rule = rule("set-out", TaskKind.DO,
				new Span(new MarkerAnchor(THAW, Days.NONE, false, Bounds.NONE, second), on(SPRING, 30), 0, 1));
		PlannedTask task = task(plan(rule), "test/set-out");
		assertThat(task.window()).isEqualTo(window("2027-04-23", "2027-05-20"));
	}

	@Test
	void anEventIsTakenAtTheTemperatureOfTheSpecies() {
		SpeciesId boxwood = new SpeciesId("buxus-sempervirens");
		MarkerKey cold = PlanFixture.key(MarkerKind.LAST_SPRING_FREEZE, "20F", 50);
		MarkerAnchor from = MarkerAnchor.at(cold, Map.of(boxwood, Objects.requireNonNull(SPRING.threshold())),
				Days.NONE, false, Bounds.NONE, null);
		assertThat(from.words()).contains("what the species needs");
		PlannedTask task = task(plan(rule("sow", TaskKind.DO, new Span(from, on(SPRING, 30), 0, 1))), "test/sow");
		assertThat(task.window()).isEqualTo(window("2027-04-20", "2027-05-20"));
	}

	@Test
	void aDateThatWaitsNeedsADateOfItsOwn() {
		MarkerKey soil = PlanFixture.key(MarkerKind.SOIL_WARMS_TO, "60F", 50);
		Rule rule = rule("unmound", TaskKind.DO,
				new Span(new MarkerAnchor(soil, Days.NONE, false, Bounds.NONE, on(SPRING, 0)), on(SPRING, 30), 0, 1));
		Plan plan = plan(rule);
		assertThat(plan.tasks()).isEmpty();
		assertThat(plan.gaps()).hasSize(1);
	}

	@Test
	void daysAndAmountsDifferBySpecies() {
		SpeciesId boxwood = new SpeciesId("buxus-sempervirens");
		Rule plain = rule("sow", TaskKind.DO, new Span(
				new MarkerAnchor(SPRING, new Days(0, Map.of(boxwood, -28)), false, Bounds.NONE), on(SPRING, 0), 0, 1));
		Rule rule = new Rule("sow", TaskKind.DO, plain.work(), plain.concern(), plain.timing(), List.of(), Weather.ANY,
				Set.of(), plain.effort(), plain.text(), Map.of(boxwood, "A hand deep"), plain.sources());
		PlannedTask task = task(plan(rule), "test/sow");
		assertThat(task.window().from()).isEqualTo(day("2027-03-23"));
		assertThat(task.text().amount()).isEqualTo("A hand deep");
	}

	@Test
	void aRegionHasItsOwnDaysAndSaysWhy() {
		Rule elsewhere = rule("oaks", TaskKind.HOLD_OFF, Work.PRUNE, FALL_DAYS, Weather.ANY, Set.of(),
				List.of(new Variant(new Where(Set.of("US-OH"), Set.of()), null, null, true, "No law there.", List.of()),
						new Variant(new Where(Set.of("US-MI"), Set.of()), on(FALL, 10), null, false,
								"The county asks for it.", List.of())));
		PlannedTask task = task(plan(elsewhere), "test/oaks");
		assertThat(task.window()).isEqualTo(window("2027-10-25", "2027-11-14"));
		assertThat(task.explanation().steps()).filteredOn((step) -> step.label().equals("Other days hold here"))
			.singleElement()
			.satisfies((step) -> assertThat(step.detail()).isEqualTo("The county asks for it."));
		PlanSite ohio = new PlanSite(PlanFixture.SITE, Hemisphere.NORTH,
				new SiteFacts("US-OH", "", SoilTexture.LOAM, Set.of()), markers());
		assertThat(PlanFixture.planner(pack(elsewhere))
			.plan(ohio, List.of(PlanFixture.boxwoodPlantedOn("2015-04-01")), one(), day("2027-06-01")))
			.isEqualTo(Plan.NOTHING);
	}

	/** One winter in two: 15 of 30 are enough, 14 are not. */
	@ParameterizedTest
	@CsvSource({ "15, true", "14, false", "30, true", "0, false" })
	void aRuleForColdPlacesIsForNoOthers(int years, boolean comes) {
		Rule plain = rule("screen", TaskKind.DO, FALL_DAYS);
		Rule screen = inTheCold(plain, new Freezing(TemperatureThreshold.parse("20F"), 2));
		Plan plan = PlanFixture.planner(pack(screen))
			.plan(PlanFixture.site(markers().freezing(years / 30.0)),
					List.of(PlanFixture.boxwoodPlantedOn("2015-04-01")), one(), day("2027-06-01"));
		assertThat(plan.tasks()).hasSize(comes ? 1 : 0);
		assertThat(plan.gaps()).as("nothing is missing where a rule is not for the place").isEmpty();
	}

	@Test
	void whereNobodyKnowsHowColdItGetsARuleStands() {
		Rule screen = inTheCold(rule("screen", TaskKind.DO, FALL_DAYS),
				new Freezing(TemperatureThreshold.parse("20F"), 2));
		assertThat(plan(screen).tasks()).hasSize(1);
	}

	private static Rule inTheCold(Rule plain, Freezing freezing) {
		Concern boxwood = new Concern(Set.of("boxwood"), Set.of(), Set.of(), Set.of(), Set.of(), null, null, null,
				YearsSincePlanting.ANY, Set.of(), Where.ANYWHERE, Set.of(), freezing);
		return new Rule(plain.id(), plain.kind(), plain.work(), boxwood, plain.timing(), List.of(), Weather.ANY,
				Set.of(), plain.effort(), plain.text(), Map.of(), plain.sources());
	}

	@Test
	void aSiteRuleHasTheSiteForItsSubject() {
		Rule plain = rule("drain", TaskKind.DO, FALL_DAYS);
		Concern pipes = new Concern(Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), null, null, null,
				YearsSincePlanting.ANY, Set.of(), Where.ANYWHERE, Set.of(SiteFeature.IRRIGATION), null);
		Rule drain = new Rule("drain", TaskKind.DO, Work.IRRIGATION, pipes, FALL_DAYS, List.of(), Weather.ANY, Set.of(),
				plain.effort(), plain.text(), Map.of(), plain.sources());
		assertThat(plan(drain)).as("no pipes").isEqualTo(Plan.NOTHING);
		PlanSite piped = new PlanSite(PlanFixture.SITE, Hemisphere.NORTH,
				new SiteFacts("", "", SoilTexture.LOAM, Set.of(SiteFeature.IRRIGATION)), markers());
		Plan plan = PlanFixture.planner(pack(drain))
			.plan(piped, List.of(PlanFixture.boxwoodPlantedOn("2015-04-01")), one(), day("2027-06-01"));
		assertThat(plan.tasks()).singleElement().satisfies((task) -> {
			assertThat(task.planting()).isNull();
			assertThat(task.id()).isEqualTo(TaskIdentity.of(PlanFixture.SITE.value(), "test/drain", 2027, 0));
		});
	}

	@Test
	void theWeatherSpeaksForTheTurnThatHoldsTodayOnly() {
		Rule water = watered(new Weather(List.of(), List.of(), List.of(MOIST)));
		Plan plan = plan("2027-10-24", (condition, day) -> answer(true), water);
		assertThat(plan.tasks()).extracting(PlannedTask::call)
			.containsExactly(Call.WANTED, Call.NEEDLESS, Call.WANTED, Call.WANTED);
		assertThat(plan.tasks().get(1).because())
			.isEqualTo("The weather makes it needless for now. Root zone: 80 % full.");
		for (Boolean unknownOrNo : new Boolean[] { null, false }) {
			assertThat(plan("2027-10-24", (condition, day) -> answer(unknownOrNo), water).tasks())
				.allSatisfy((task) -> assertThat(task.call()).isEqualTo(Call.WANTED));
		}
	}

	@Test
	void whatOpensATaskMustNotBeKnownToFail() {
		Rule water = watered(new Weather(List.of(MOIST), List.of(), List.of()));
		assertThat(plan("2027-10-24", (condition, day) -> answer(false), water).tasks().get(1).call())
			.isEqualTo(Call.NEEDLESS);
		assertThat(plan("2027-10-24", WeatherAnswers.UNKNOWN, water).tasks().get(1).call()).isEqualTo(Call.WANTED);
	}

	@Test
	void repeatsAndHoldOffsThatTheWeatherOpensAreNotToldAhead() {
		Weather opened = new Weather(List.of(MOIST), List.of(), List.of());
		WeatherAnswers yes = (condition, day) -> answer(true);
		// Of the turns from 15, 22, 29 October and 5 November those that have begun.
		assertThat(plan("2027-10-24", yes, watered(opened)).tasks()).extracting((task) -> task.window().from())
			.containsExactly(day("2027-10-15"), day("2027-10-22"));
		assertThat(plan("2027-10-22", yes, watered(opened)).tasks()).hasSize(2);
		assertThat(plan("2027-10-21", yes, watered(opened)).tasks()).hasSize(1);
		Span once = new Span(on(FALL, 0), on(FALL, 27), 0, 1);
		Rule holdOff = rule("hold", TaskKind.HOLD_OFF, Work.FEED, once, opened, Set.of(), List.of());
		assertThat(plan("2027-10-14", yes, holdOff).tasks()).isEmpty();
		assertThat(plan("2027-10-15", yes, holdOff).tasks()).hasSize(1);
		Rule yearly = rule("oil", TaskKind.DO, Work.TREAT, once, opened, Set.of(), List.of());
		assertThat(plan("2027-10-14", yes, yearly).tasks()).as("comes every year").hasSize(1);
	}

	@Test
	void whatIsPutOffBeginsTomorrowAndEndsNoEarlier() {
		Rule water = watered(new Weather(List.of(), List.of(COLD), List.of()));
		WeatherAnswers cold = (condition, day) -> answer(true);
		PlannedTask middle = plan("2027-10-24", cold, water).tasks().get(1);
		assertThat(middle.window()).isEqualTo(window("2027-10-25", "2027-10-28"));
		assertThat(middle.explanation().steps()).extracting(Explanation::label).contains("Put off by the weather");
		assertThat(plan("2027-10-28", cold, water).tasks().get(1).window())
			.isEqualTo(window("2027-10-29", "2027-10-29"));
		assertThat(plan("2027-10-24", WeatherAnswers.UNKNOWN, water).tasks().get(1).window())
			.isEqualTo(window("2027-10-22", "2027-10-28"));
	}

	@Test
	void theWeatherPicksSingleDaysAndNeedsAYes() {
		Rule cover = rule("cover", TaskKind.DO, Work.COVER, new DayByDay(on(SPRING, -5), on(SPRING, 1), 1),
				new Weather(List.of(COLD), List.of(), List.of()), Set.of(), List.of());
		// 19 April plus three days of forecast; 21 April is the last that counts. What is
		// asked for is the low of the morning after.
		Plan plan = plan("2027-04-19", (condition, day) -> answer(switch (day.getDayOfMonth()) {
			case 20 -> Boolean.TRUE;
			case 21 -> null;
			default -> Boolean.FALSE;
		}), cover);
		assertThat(plan.tasks()).extracting(PlannedTask::call)
			.containsExactly(Call.WANTED, Call.UNKNOWN, Call.NEEDLESS);
		PlannedTask first = plan.tasks().get(0);
		assertThat(first.window()).isEqualTo(window("2027-04-18", "2027-04-19"));
		assertThat(first.occurrence()).isEqualTo(day("2027-04-19").getDayOfYear());
	}

	private static Rule watered(Weather weather) {
		return rule("water", TaskKind.DO, Work.WATER, new Span(on(FALL, 0), on(FALL, 27), 7, 1), weather, Set.of(),
				List.of());
	}

	private static WeatherAnswers.Answer answer(@Nullable Boolean holds) {
		return new WeatherAnswers.Answer(holds, Explanation.of("Root zone", "80 % full"));
	}

	private static Observed saw(String date) {
		return new Observed() {

			@Override
			public Optional<LocalDate> phase(PlantingId planting, String phase, int season) {
				return (season == 2027) ? Optional.of(day(date)) : Optional.empty();
			}

			@Override
			public Optional<LocalDate> event(@Nullable PlantingId planting, String event, int season) {
				return (season == 2027) ? Optional.of(day(date)) : Optional.empty();
			}

			@Override
			public String log() {
				throw new UnsupportedOperationException("nobody asks");
			}

		};
	}

	private static Plan plan(Rule... rules) {
		return plan("2027-06-01", WeatherAnswers.UNKNOWN, rules);
	}

	private static Plan plan(String today, WeatherAnswers weather, Rule... rules) {
		RulePack pack = pack(rules);
		return PlanFixture.planner(pack)
			.plan(PlanFixture.site(markers(), Observed.NOTHING, weather),
					List.of(PlanFixture.boxwoodPlantedOn("2015-04-01")), one(), day(today));
	}

	private static PlannedTask task(Plan plan, String rule) {
		return plan.tasks().stream().filter((task) -> task.rule().equals(rule)).findFirst().orElseThrow();
	}

	private static List<Season> one() {
		return List.of(new Season(2027, Hemisphere.NORTH));
	}

	private static DayWindow window(String from, String to) {
		return new DayWindow(day(from), day(to));
	}

	private static LocalDate day(String date) {
		return LocalDate.parse(date);
	}

}
