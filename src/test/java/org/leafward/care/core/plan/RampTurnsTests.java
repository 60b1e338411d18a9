package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.leafward.amounts.Amount;
import org.leafward.amounts.light.Aspect;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.light.RampLimits;
import org.leafward.amounts.light.SiteLight;
import org.leafward.amounts.light.StartingLight;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.Condition;
import org.leafward.care.core.rule.PlantingDateAnchor;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampLight;
import org.leafward.care.core.rule.RampStep;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Weather;
import org.leafward.care.core.rule.Work;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.register.PlantingId;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.care.core.plan.PlanFixture.markers;
import static org.leafward.care.core.plan.PlanFixture.pack;
import static org.leafward.care.core.plan.PlanFixture.planner;

/**
 * Ramps of light in a plan: what is held, what was told and what was logged. That a day
 * of cold or wind is waited out, and that hardening takes about two weeks, is common
 * practice.
 */
class RampTurnsTests {

	private static final GeoPoint PLACE = new GeoPoint(42.3, -83.7, 260);

	/** Set out on 15 May 2027: the ramp runs from 1 to 14 May. */
	private static final String SET_OUT = "2027-05-15";

	private static final LocalDate FIRST = LocalDate.of(2027, 5, 1);

	private static final Function<LocalDate, @Nullable Boolean> FIT = (day) -> false;

	private static final Condition COLD = new Condition("cool-days", "45F", 0);

	private static final Rule RULE = rule();

	private static Rule rule() {
		Ramp ramp = new Ramp(new PlantingDateAnchor(-1), true,
				List.of(new RampStep(7, "shade", null, "Out into the shade."),
						new RampStep(7, "sun", null, "Out into the sun.")),
				new RampLight(RampLight.Way.OUT, TemperatureThreshold.parse("50F"), Map.of()));
		return PlanFixture.rule("harden", TaskKind.RAMP_DAY, Work.HARDEN, ramp,
				new Weather(List.of(), List.of(COLD), List.of()), Set.of(), List.of());
	}

	/** Plants that stand in some light now. */
	private record From(StartingLight start) implements Figures {

		@Override
		public Optional<Amount> amount(Rule rule, Subject subject, DayWindow window) {
			return Optional.empty();
		}

		@Override
		public Optional<HardeningRamp> ramp(RampLight light, Subject subject, LocalDate first, int days) {
			return Optional.of(HardeningRamp.plan(PLACE, ZoneId.of("America/Detroit"), first, days, this.start,
					SiteLight.FULL_SUN, RampLimits.forNights(10)));
		}

	}

	/** What was told, by the number of the day. */
	private record Told(List<RampDay> days) implements Observed {

		@Override
		public Optional<LocalDate> phase(PlantingId planting, String phase, int season) {
			return Optional.empty();
		}

		@Override
		public Optional<LocalDate> event(org.leafward.register.PlantingId planting, String event, int season) {
			return Optional.empty();
		}

		@Override
		public List<RampDay> ramp(PlantingId planting, String rule, int season) {
			assertThat(rule).isEqualTo("test/harden");
			assertThat(season).isEqualTo(2027);
			return this.days;
		}

		@Override
		public String log() {
			return this.days.toString();
		}

	}

	private static List<PlannedTask> plan(LocalDate today, List<RampDay> told,
			Function<LocalDate, @Nullable Boolean> cold) {
		return plan(today, told, cold, new StartingLight.Windowsill(Aspect.SOUTH));
	}

	private static List<PlannedTask> plan(LocalDate today, List<RampDay> told,
			Function<LocalDate, @Nullable Boolean> cold, StartingLight start) {
		WeatherAnswers weather = new WeatherAnswers() {

			@Override
			public Answer ask(Condition condition, LocalDate day) {
				return UNKNOWN.ask(condition, day);
			}

			@Override
			public Answer on(Condition condition, LocalDate day) {
				Boolean holds = condition.equals(COLD) ? cold.apply(day) : Boolean.FALSE;
				return new Answer(holds, Explanation.of("cool days ahead", "6 °C"));
			}

		};
		PlanSite site = new PlanSite(PlanFixture.SITE, Hemisphere.NORTH, PlanFixture.LOAM, markers(), new Told(told),
				weather, new From(start));
		Season season = new Season(2027, Hemisphere.NORTH);
		return planner(pack(RULE)).plan(site, List.of(PlanFixture.boxwoodPlantedOn(SET_OUT)), List.of(season), today)
			.tasks();
	}

	private static List<RampDay> taken(int days) {
		List<RampDay> told = new ArrayList<>();
		for (int number = 1; number <= days; number++) {
			told.add(new RampDay(number, FIRST.plusDays(number - 1L), number, false, false));
		}
		return told;
	}

	private static List<Integer> steps(List<PlannedTask> tasks) {
		return tasks.stream().map(PlannedTask::rampStep).toList();
	}

	@Test
	void twoWeeksEndTheDayBeforeSettingOut() {
		List<PlannedTask> tasks = plan(LocalDate.of(2027, 4, 1), List.of(), FIT);
		assertThat(tasks).hasSize(14);
		assertThat(tasks.get(0).window()).isEqualTo(DayWindow.of(FIRST));
		assertThat(tasks.get(13).window()).isEqualTo(DayWindow.of(LocalDate.of(2027, 5, 14)));
		assertThat(steps(tasks)).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14);
		assertThat(tasks.get(0).text().title()).isEqualTo("Day 1 of 14: Do harden");
		assertThat(tasks.get(0).text().what()).isEqualTo("Out into the shade.");
		assertThat(tasks.get(13).text().what()).isEqualTo("Out into the sun.");
		assertThat(tasks.get(13).text().amount()).startsWith("Out day and night: in the place where it will grow");
		assertThat(tasks).extracting(PlannedTask::occurrence).doesNotHaveDuplicates();
	}

	/** What has the light already needs five days, and they end before setting out. */
	@Test
	void aShortRampEndsTheDayBeforeSettingOutToo() {
		List<PlannedTask> tasks = plan(LocalDate.of(2027, 4, 1), List.of(), FIT, new StartingLight.Lamp(1500, 24));
		assertThat(tasks).hasSize(5);
		assertThat(tasks.get(4).window()).isEqualTo(DayWindow.of(LocalDate.of(2027, 5, 14)));
	}

	@Test
	void aColdDayIsHeldAndShiftsTheRest() {
		LocalDate tomorrow = FIRST.plusDays(5);
		List<PlannedTask> tasks = plan(FIRST.plusDays(4), taken(4), tomorrow::equals);
		assertThat(tasks.get(0).occurrence()).isEqualTo(5);
		assertThat(steps(tasks)).containsExactly(5, 6, 6, 7, 8, 9, 10, 11, 12, 13, 14);
		PlannedTask held = tasks.get(1);
		assertThat(held.rampHeld()).isTrue();
		assertThat(held.text().title()).isEqualTo("Day 6 of 15, kept in: Do harden");
		assertThat(held.text().what()).contains("Stays in today").contains("Cool days ahead: 6 °C.");
		assertThat(held.explanation().toString()).contains("Kept in by the weather");
		assertThat(tasks.get(10).window()).isEqualTo(DayWindow.of(LocalDate.of(2027, 5, 15)));
	}

	@Test
	void aDayThatSomebodyLeftOutIsRepeated() {
		List<RampDay> told = taken(4);
		told.set(3, new RampDay(4, FIRST.plusDays(3), 4, true, true));
		assertThat(steps(plan(FIRST.plusDays(4), told, FIT))).startsWith(4, 5, 6).hasSize(11);
	}

	@Test
	void todayGoesOnFromWhatWasLoggedToday() {
		List<RampDay> told = taken(4);
		told.add(new RampDay(5, FIRST.plusDays(4), 5, true, true));
		List<PlannedTask> tasks = plan(FIRST.plusDays(4), told, FIT);
		assertThat(tasks.get(0).occurrence()).isEqualTo(5);
		assertThat(steps(tasks)).startsWith(5, 5, 6);
	}

	@Test
	void aDayThatWasHeldStaysHeldWhenTheForecastForgetsIt() {
		LocalDate today = FIRST.plusDays(4);
		List<RampDay> told = taken(4);
		told.add(new RampDay(5, today, 5, true, false));
		Function<LocalDate, @Nullable Boolean> unknown = (day) -> null;
		assertThat(plan(today, told, unknown).get(0).rampHeld()).isTrue();
		assertThat(plan(today, told, FIT).get(0).rampHeld()).as("the forecast takes it back").isFalse();
		assertThat(plan(today, taken(4), unknown).get(0).rampHeld()).as("unknown holds nothing").isFalse();
	}

	@Test
	void aDayThatIsLeftOutAheadIsHeld() {
		List<RampDay> told = taken(4);
		told.add(new RampDay(8, FIRST.plusDays(7), 8, true, true));
		List<PlannedTask> tasks = plan(FIRST.plusDays(4), told, FIT);
		assertThat(steps(tasks)).containsExactly(5, 6, 7, 8, 8, 9, 10, 11, 12, 13, 14);
		assertThat(tasks.get(3).rampHeld()).isTrue();
	}

	/** The days that were told lie a day later than the rule has them by now. */
	@Test
	void aRampThatHasBegunKeepsItsDays() {
		List<RampDay> told = taken(4).stream()
			.map((day) -> new RampDay(day.number(), day.day().plusDays(1), day.step(), false, false))
			.toList();
		List<PlannedTask> tasks = plan(FIRST.plusDays(5), told, FIT);
		assertThat(tasks.get(0).occurrence()).isEqualTo(5);
		assertThat(tasks.get(0).window()).isEqualTo(DayWindow.of(FIRST.plusDays(5)));
		assertThat(steps(tasks)).startsWith(5, 6).hasSize(10);
	}

	@Test
	void whoComesLateBeginsWithTheFirstStep() {
		List<PlannedTask> tasks = plan(FIRST.plusDays(10), List.of(), FIT);
		assertThat(tasks.get(0).occurrence()).isEqualTo(11);
		assertThat(steps(tasks)).startsWith(1, 2, 3).hasSize(14);
	}

	@Test
	void aRampThatNobodyBeganIsOverWhenThePlantsAreOut() {
		assertThat(plan(LocalDate.of(2027, 5, 16), List.of(), FIT)).isEmpty();
	}

	@Test
	void whatWasToldIsNeverPlannedAgain() {
		List<PlannedTask> first = plan(FIRST, List.of(), FIT);
		List<RampDay> told = new ArrayList<>();
		for (PlannedTask task : first.subList(0, 6)) {
			told.add(new RampDay(task.occurrence(), task.window().from(), task.rampStep(), task.rampHeld(), false));
		}
		List<PlannedTask> later = plan(FIRST.plusDays(6), told, FIT);
		assertThat(later).extracting(PlannedTask::id)
			.isEqualTo(first.subList(6, 14).stream().map(PlannedTask::id).toList());
		assertThat(later).extracting((task) -> task.wording().name())
			.isEqualTo(first.subList(6, 14).stream().map((task) -> task.wording().name()).toList());
	}

}
