package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.core.plan.PlannedTask.Call;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Bounds;
import org.leafward.care.core.rule.Condition;
import org.leafward.care.core.rule.Days;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampStep;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Timing;
import org.leafward.care.core.rule.Weather;
import org.leafward.care.core.rule.Work;
import org.leafward.climate.MarkerKey;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.register.PlantingId;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What holds for any rules, plantings and dates: made up from seeds, so that a failure
 * comes back.
 */
class PlanPropertiesTests {

	private static final List<MarkerKey> MARKERS = List.of(PlanFixture.SPRING, PlanFixture.FALL, PlanFixture.GROUND,
			PlanFixture.THAW);

	private static final Condition MOIST = new Condition("root-zone-moist", null, 0);

	private static final Condition COLD = new Condition("low-ahead", "34F", 0);

	/** From a day of the north to the same of the south. */
	private static final int HALF_A_YEAR = 183;

	static IntStream seeds() {
		return IntStream.range(0, 40);
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void theOrderOfRulesAndPlantingsMakesNoDifference(int seed) {
		World world = new World(seed);
		Plan plan = world.plan(world.weather);
		Collections.shuffle(world.rules, new Random(seed));
		Collections.shuffle(world.plantings, new Random(seed));
		assertThat(seen(world.plan(world.weather))).isEqualTo(seen(plan));
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void identifiersAreNeverSharedAndHangOnNothingElse(int seed) {
		World world = new World(seed);
		Plan plan = world.plan(world.weather);
		Set<TaskId> ids = plan.tasks().stream().map(PlannedTask::id).collect(Collectors.toSet());
		assertThat(ids).hasSameSizeAs(plan.tasks());
		assertThat(plan.tasks()).allSatisfy((task) -> assertThat(task.id())
			.isEqualTo(TaskIdentity.of(task.subject().id(), task.rule(), task.season(), task.occurrence())));
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void noTaskLiesOutsideItsMarkers(int seed) {
		World world = new World(seed);
		for (PlannedTask task : world.plan(WeatherAnswers.UNKNOWN).tasks()) {
			Rule rule = world.rules.stream()
				.filter((one) -> task.rule().endsWith("/" + one.id()))
				.findFirst()
				.orElseThrow();
			DayWindow most = world.window(rule.timing(), task.season());
			assertThat(task.window().from()).as(task.rule()).isAfterOrEqualTo(most.from());
			assertThat(task.window().to()).as(task.rule()).isBeforeOrEqualTo(most.to());
		}
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void noDoLiesInAHoldOffFromTheSameWork(int seed) {
		World world = new World(seed);
		List<PlannedTask> tasks = world.plan(WeatherAnswers.UNKNOWN).tasks();
		for (PlannedTask hold : tasks) {
			for (PlannedTask task : tasks) {
				if (hold.kind() == TaskKind.HOLD_OFF && task.kind() == TaskKind.DO && task.work() == hold.work()
						&& task.subject() == hold.subject()) {
					assertThat(task.window().overlaps(hold.window())).as("%s %s", hold.rule(), task.rule()).isFalse();
				}
			}
		}
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void derivingTwiceWritesNothing(int seed) {
		World world = new World(seed);
		Store store = new Store();
		store.derive(world, world.plan(world.weather));
		Plan again = world.plan(world.weather);
		assertThat(store.diff(world, again).isEmpty()).isTrue();
		assertThat(fingerprint(world, again)).isEqualTo(fingerprint(world, world.plan(world.weather)));
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void anEqualFingerprintMeansThatNothingIsWritten(int seed) {
		World world = new World(seed);
		World other = new World(seed);
		other.change(new Random(seed));
		Plan plan = world.plan(world.weather);
		Plan changed = other.plan(other.weather);
		Store store = new Store();
		store.derive(world, plan);
		if (Arrays.equals(fingerprint(world, plan), fingerprint(other, changed))) {
			assertThat(store.diff(other, changed).isEmpty()).isTrue();
		}
		else {
			assertThat(seen(changed)).isNotEqualTo(seen(plan));
		}
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void withdrawnAndReopenedTasksKeepTheirIdentifier(int seed) {
		World world = new World(seed);
		Store store = new Store();
		store.derive(world, world.plan(WeatherAnswers.UNKNOWN));
		Set<TaskId> before = Set.copyOf(store.tasks.keySet());
		WeatherAnswers moist = (condition, day) -> new WeatherAnswers.Answer(true, Explanation.of("Soil", "moist"));
		Plan needless = world.plan(moist);
		long withheld = needless.tasks().stream().filter((task) -> task.call() == Call.NEEDLESS).count();
		PlanDiff gone = store.derive(world, needless);
		assertThat(gone.withdrawn()).hasSize((int) withheld);
		assertThat(store.derive(world, needless).isEmpty()).isTrue();
		PlanDiff back = store.derive(world, world.plan(WeatherAnswers.UNKNOWN));
		assertThat(back.reopened()).hasSize((int) withheld);
		assertThat(back.added()).isEmpty();
		assertThat(Set.copyOf(store.tasks.keySet())).isEqualTo(before);
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void doneTasksNeverMove(int seed) {
		World world = new World(seed);
		Store store = new Store();
		store.derive(world, world.plan(WeatherAnswers.UNKNOWN));
		store.tasks.replaceAll((id, task) -> with(task, (seed % 2 == 0) ? TaskState.DONE : TaskState.SKIPPED));
		List<StoredTask> before = List.copyOf(store.tasks.values());
		world.change(new Random(seed));
		store.derive(world, world.plan(world.weather));
		assertThat(store.tasks.values()).containsAll(before);
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void weatherThatNobodyKnowsChangesNothing(int seed) {
		World world = new World(seed);
		// Turns and hold-offs that the weather opens are not told ahead, known or not.
		Set<String> opened = world.rules.stream()
			.filter((rule) -> !rule.weather().opens().isEmpty()
					&& (rule.kind() == TaskKind.HOLD_OFF || (rule.timing() instanceof Span span && span.repeats())))
			.map(Rule::id)
			.collect(Collectors.toSet());
		Plan unknown = world.plan(WeatherAnswers.UNKNOWN);
		List<Rule> careless = world.rules.stream()
			.map((rule) -> PlanFixture.rule(rule.id(), rule.kind(), rule.work(), rule.timing(), Weather.ANY, Set.of(),
					List.of()))
			.toList();
		world.rules.clear();
		world.rules.addAll(careless);
		Plan without = world.plan(WeatherAnswers.UNKNOWN);
		assertThat(seen(unknown)).isEqualTo(seen(new Plan(without.tasks()
			.stream()
			.filter((task) -> !task.window().from().isAfter(world.today)
					|| !opened.contains(task.rule().substring(task.rule().indexOf('/') + 1)))
			.toList(), without.gaps())));
	}

	/** In 2025 and the years that its windows reach into there is no 29 February. */
	@ParameterizedTest
	@MethodSource("seeds")
	void theSouthIsTheNorthHalfAYearLater(int seed) {
		World north = new World(seed);
		north.establish();
		World south = new World(seed);
		south.establish();
		south.mirror();
		List<String> mirrored = tasks(south.plan(WeatherAnswers.UNKNOWN, List.of(new Season(2025, Hemisphere.SOUTH))),
				0);
		assertThat(mirrored).isEqualTo(
				tasks(north.plan(WeatherAnswers.UNKNOWN, List.of(new Season(2025, Hemisphere.NORTH))), HALF_A_YEAR));
	}

	private static List<String> tasks(Plan plan, int later) {
		return plan.tasks()
			.stream()
			.map((task) -> "%s %s %s".formatted(task.id(), task.window().from().plusDays(later),
					task.window().to().plusDays(later)))
			.toList();
	}

	private static byte[] fingerprint(World world, Plan plan) {
		return PlanFingerprint.of(world.site(WeatherAnswers.UNKNOWN), plan, world.today.toEpochDay());
	}

	/** All that a plan says, in an order of its own. */
	private static List<String> seen(Plan plan) {
		List<String> lines = new ArrayList<>(plan.tasks()
			.stream()
			.map((task) -> "%s %s %s %s %s %s %s".formatted(task.id(), task.plant(), task.window(), task.call(),
					task.because(), task.text(), task.explanation()))
			.toList());
		plan.gaps().forEach((gap) -> lines.add(gap.toString()));
		Collections.sort(lines);
		return lines;
	}

	private static StoredTask with(StoredTask task, TaskState state) {
		return new StoredTask(task.id(), task.planting(), task.plant(), task.rule(), task.season(), task.kind(),
				task.work(), task.window(), task.wording(), state, task.explanation());
	}

	/** A table in memory that writes what a difference says. */
	private static final class Store {

		private final TreeMap<TaskId, StoredTask> tasks = new TreeMap<>(
				Comparator.comparing((TaskId id) -> id.value()));

		PlanDiff diff(World world, Plan plan) {
			Set<PlantingId> present = world.plantings.stream()
				.map((subject) -> new PlantingId(subject.id()))
				.collect(Collectors.toSet());
			return PlanDiff.between(List.copyOf(this.tasks.values()), plan, present, world.today, PlanFixture::name);
		}

		PlanDiff derive(World world, Plan plan) {
			PlanDiff diff = diff(world, plan);
			Function<PlannedTask, StoredTask> row = (
					task) -> PlanFixture.stored(new Plan(List.of(task), List.of()), TaskState.PLANNED).get(0);
			for (List<PlannedTask> part : List.of(diff.added(), diff.changed(), diff.reopened(), diff.explained())) {
				part.forEach((task) -> this.tasks.put(task.id(), row.apply(task)));
			}
			diff.withdrawn()
				.forEach((gone) -> this.tasks.computeIfPresent(gone.task(),
						(id, task) -> with(task, TaskState.WITHDRAWN)));
			return diff;
		}

	}

	/** Rules, plantings, dates, a day and its weather, from a seed. */
	private static final class World {

		private final List<Rule> rules = new ArrayList<>();

		private final List<Subject> plantings = new ArrayList<>();

		private PlanFixture.FixedMarkers markers = PlanFixture.markers();

		private Hemisphere hemisphere = Hemisphere.NORTH;

		private LocalDate today;

		private WeatherAnswers weather;

		World(int seed) {
			Random random = new Random(seed);
			for (int i = 0; i < 12; i++) {
				this.rules.add(rule("r" + i, random));
			}
			for (int i = 1; i <= 5; i++) {
				this.plantings
					.add(PlanFixture.planting(i, LocalDate.of(2020, 1, 15).plusDays(random.nextInt(2_900)).toString(),
							"bed " + random.nextInt(3)));
			}
			this.today = LocalDate.of(2027, 1, 1).plusDays(random.nextInt(365));
			int salt = random.nextInt();
			this.weather = (condition, day) -> {
				int drawn = Math.floorMod(condition.state().hashCode() * 31 + (int) day.toEpochDay() + salt, 3);
				return new WeatherAnswers.Answer((drawn == 0) ? null : Boolean.valueOf(drawn == 1),
						Explanation.of(condition.state(), "drawn " + drawn));
			};
		}

		private static Rule rule(String id, Random random) {
			if (random.nextInt(6) == 0) {
				return PlanFixture.rule(id, TaskKind.RAMP_DAY, Work.HARDEN,
						new Ramp(anchor(random), random.nextBoolean(),
								List.of(new RampStep(1 + random.nextInt(5), "shade", 2.0, "Out."))),
						Weather.ANY, Set.of(), List.of());
			}
			TaskKind kind = List.of(TaskKind.DO, TaskKind.DO, TaskKind.HOLD_OFF, TaskKind.WATCH).get(random.nextInt(4));
			Work work = List.of(Work.PRUNE, Work.WATER, Work.FEED).get(random.nextInt(3));
			int every = (kind == TaskKind.DO && random.nextBoolean()) ? 5 + random.nextInt(20) : 0;
			return PlanFixture.rule(id, kind, work,
					new Span(anchor(random), anchor(random), every, 1 + random.nextInt(6)), weather(kind, random),
					Set.of(), List.of());
		}

		private static Weather weather(TaskKind kind, Random random) {
			return (kind != TaskKind.DO) ? Weather.ANY : switch (random.nextInt(4)) {
				case 0 -> new Weather(List.of(COLD), List.of(), List.of(MOIST));
				case 1 -> new Weather(List.of(), List.of(), List.of(MOIST));
				default -> Weather.ANY;
			};
		}

		private static MarkerAnchor anchor(Random random) {
			return new MarkerAnchor(MARKERS.get(random.nextInt(4)), Days.of(random.nextInt(80) - 40),
					random.nextInt(5) == 0, Bounds.NONE);
		}

		/**
		 * Markers move by some days, one is lost, a planting goes, another is called
		 * anew.
		 */
		void change(Random random) {
			for (MarkerKey key : MARKERS) {
				this.markers.with(key, "%02d-%02d".formatted(1 + random.nextInt(12), 1 + random.nextInt(28)));
			}
			if (random.nextBoolean()) {
				this.markers.without(MARKERS.get(random.nextInt(4)));
			}
			this.plantings.remove(0);
		}

		/** Plantings that have stood for long. */
		void establish() {
			this.plantings.replaceAll((subject) -> PlanFixture
				.planting((int) (subject.id().getLeastSignificantBits() & 0xff), "2015-09-01", "bed"));
		}

		void mirror() {
			this.hemisphere = Hemisphere.SOUTH;
			this.markers.later(HALF_A_YEAR);
			this.today = this.today.plusDays(HALF_A_YEAR);
		}

		PlanSite site(WeatherAnswers answers) {
			return new PlanSite(PlanFixture.SITE, this.hemisphere, PlanFixture.LOAM, this.markers, Observed.NOTHING,
					answers);
		}

		Plan plan(WeatherAnswers answers) {
			Season season = new Season(2027, this.hemisphere);
			return plan(answers, List.of(season.previous(), season, season.next()));
		}

		Plan plan(WeatherAnswers answers, List<Season> seasons) {
			List<RulePack> packs = List.of(new RulePack("test", 1, "Test", "Anywhere.", List.copyOf(this.rules)));
			return new Planner(packs, Phenology.NONE).plan(site(answers), this.plantings, seasons, this.today);
		}

		DayWindow window(Timing timing, int year) {
			if (timing instanceof Ramp ramp) {
				LocalDate day = date((MarkerAnchor) ramp.anchor(), year);
				return ramp.endsAtAnchor() ? new DayWindow(day.minusDays(ramp.days() - 1L), day)
						: new DayWindow(day, day.plusDays(ramp.days() - 1L));
			}
			Span span = (Span) timing;
			return new DayWindow(date((MarkerAnchor) span.from(), year), date((MarkerAnchor) span.to(), year));
		}

		private LocalDate date(MarkerAnchor anchor, int year) {
			return this.markers.on(anchor.marker(), anchor.nextSeason() ? year + 1 : year)
				.orElseThrow()
				.date()
				.plusDays(anchor.days().days());
		}

	}

}
