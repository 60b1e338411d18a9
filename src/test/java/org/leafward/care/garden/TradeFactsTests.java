package org.leafward.care.garden;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.care.TaskKind;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Hemisphere;
import org.leafward.plants.Species;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Facts of the trade (common practice) over all species of the catalogue in several
 * climates: each species is there established, new, and in a pot.
 */
class TradeFactsTests {

	private static final List<String> TENDER = List.of("vegetable-tender", "vegetable-very-tender", "annual-tender",
			"annual-very-tender", "tender-bulb", "warm-bulb");

	private static final Pattern DANGEROUS_TOOL = Pattern.compile(".*(saw|ladder|pole|sprayer|spreader).*");

	private static final Pattern DANGEROUS_WORD = Pattern.compile(
			"(?is).*\\b(saw|ladder|pesticide|herbicide|insecticide|fungicide|weed killer|horticultural oil|pole pruner)s?\\b.*");

	/** All species of the catalogue in one climate. */
	private static Garden everything(GardenClimate climate, String region) {
		StringBuilder plants = new StringBuilder();
		for (Species species : Garden.allSpecies()) {
			String id = species.id().value();
			plants.append(id + " | old " + id + " | 1 | 2012-04-20\n");
			plants.append(id + " | young " + id + " | 1 | 2024-10-01\n");
			plants.append(id + " | new " + id + " | 1 | 2026-12-28\n");
			plants.append(id + " | potted " + id + " | 1 | 2018-05-01 | container\n");
		}
		return Garden.of("everything", climate, Garden.in(region), "2026-01-15", plants.toString());
	}

	private static List<PlannedTask> tasks(GardenClimate climate, String region) {
		return GardenPlanner.plan(everything(climate, region)).tasks();
	}

	private static List<PlannedTask> dos(GardenClimate climate, String region, Work work, Predicate<Species> plants) {
		return tasks(climate, region).stream()
			.filter((task) -> task.work() == work && task.kind() == TaskKind.DO && task.subject().species() != null
					&& plants.test(task.subject().species()))
			.toList();
	}

	private static Predicate<Species> in(String... groups) {
		return (species) -> Stream.of(groups).anyMatch(species.groups()::contains);
	}

	private static LocalDate date(GardenClimate climate, String marker, int season) {
		return climate.markers().on(Markers.key(marker), season).orElseThrow().date();
	}

	private static String words(PlannedTask task) {
		return "%s %s %s".formatted(task.rule(), task.plant(), task.window());
	}

	private static List<String> overlapping(List<PlannedTask> tasks, LocalDate from, LocalDate to) {
		DayWindow days = new DayWindow(from, to);
		return tasks.stream().filter((task) -> task.window().overlaps(days)).map(TradeFactsTests::words).toList();
	}

	private static final int LATE_SUMMER = 56;

	private static final int TEN_WEEKS = 70;

	/** Leaves of the first trees are down so many days before the first freeze. */
	private static final int LEAVES_DOWN = 14;

	/** Shoots of bulbs and tubers take so many days to come up. */
	private static final int BELOW_GROUND = 14;

	/**
	 * New growth must harden before the first freezes. Late summer begins eight weeks
	 * before the first freeze; plants are at rest after the first night of 28 °F.
	 */
	@ParameterizedTest
	@EnumSource(value = GardenClimate.class, mode = EnumSource.Mode.EXCLUDE, names = "FROST_FREE_COAST")
	void noEvergreenIsPrunedBetweenLateSummerAndRest(GardenClimate climate) {
		List<PlannedTask> pruning = dos(climate, "US-NY", Work.PRUNE, in("evergreen"));
		assertThat(pruning).isNotEmpty();
		for (int season = Garden.SEASON - 1; season <= Garden.SEASON + 1; season++) {
			assertThat(overlapping(pruning, date(climate, "first-fall-freeze 32F p50", season).minusDays(LATE_SUMMER),
					date(climate, "first-fall-freeze 28F p50", season)))
				.isEmpty();
		}
	}

	/** Also after the first frost, day by day until the ground freezes. */
	@ParameterizedTest
	@EnumSource(value = GardenClimate.class, mode = EnumSource.Mode.EXCLUDE,
			names = { "FROST_FREE_COAST", "SOUTHERN_TABLELAND" })
	void evergreensAreWateredDeeplyUntilTheGroundFreezes(GardenClimate climate) {
		Map<String, List<PlannedTask>> watering = dos(climate, "US-NY", Work.WATER, in("evergreen")).stream()
			.filter((task) -> task.season() == Garden.SEASON && !task.plant().startsWith("potted")
					&& !task.plant().startsWith("new"))
			.collect(Collectors.groupingBy(PlannedTask::plant));
		assertThat(watering.keySet()).hasSize(2 * (int) Garden.allSpecies().stream().filter(in("evergreen")).count());
		LocalDate frost = date(climate, "first-fall-freeze 32F p50", Garden.SEASON);
		LocalDate frozen = date(climate, "ground-freeze p50", Garden.SEASON);
		watering.forEach((plant, tasks) -> {
			for (LocalDate day = frost; day.isBefore(frozen); day = day.plusDays(1)) {
				LocalDate asked = day;
				assertThat(tasks).as("%s on %s", plant, day).anyMatch((task) -> task.window().contains(asked));
			}
		});
	}

	/** In spring or just before it, and never as late as midsummer. */
	@ParameterizedTest
	@EnumSource(value = GardenClimate.class, mode = EnumSource.Mode.EXCLUDE, names = "FROST_FREE_COAST")
	void theMainPruningOfEvergreensFallsInSpringOrBefore(GardenClimate climate) {
		Set<String> main = Set.of("evergreen-pruning/broadleaf-main-pruning", "evergreen-pruning/needled-main-pruning",
				"evergreen-pruning/spruce-fir-shaping", "boxwood/winter-thinning");
		List<PlannedTask> pruning = dos(climate, "US-NY", Work.PRUNE, in("evergreen")).stream()
			.filter((task) -> main.contains(task.rule()) && task.season() == Garden.SEASON)
			.toList();
		assertThat(pruning).isNotEmpty().allSatisfy((task) -> {
			int year = task.window().to().getYear();
			boolean south = climate.point().hemisphere() == Hemisphere.SOUTH;
			assertThat(task.window().to()).as(words(task))
				.isBefore(south ? LocalDate.of(year, 12, 21) : LocalDate.of(year, 6, 21).plusDays(7));
			LocalDate rest = date(climate, "first-fall-freeze 28F p50",
					south ? Garden.SEASON - 1 : task.window().from().getYear() - 1);
			assertThat(task.window().from()).as(words(task)).isAfter(rest);
		});
	}

	/** Deep and infrequent. Nothing is dated by freezes where there are none. */
	@ParameterizedTest
	@EnumSource(value = GardenClimate.class, mode = EnumSource.Mode.EXCLUDE, names = "FROST_FREE_COAST")
	void establishedPlantsAreWateredOnceAWeekAtMost(GardenClimate climate) {
		Map<String, List<PlannedTask>> turns = dos(climate, "US-NY", Work.WATER, (species) -> true).stream()
			.filter((task) -> task.plant().startsWith("old"))
			.filter((task) -> rule(task).timing() instanceof Span)
			.collect(Collectors.groupingBy((task) -> task.rule() + " " + task.plant() + " " + task.season()));
		assertThat(turns).isNotEmpty();
		turns.forEach((name, tasks) -> {
			List<LocalDate> days = tasks.stream()
				.map((task) -> task.window().from())
				.sorted(Comparator.naturalOrder())
				.toList();
			for (int turn = 1; turn < days.size(); turn++) {
				assertThat(ChronoUnit.DAYS.between(days.get(turn - 1), days.get(turn))).as(name)
					.isGreaterThanOrEqualTo(7);
			}
		});
	}

	private static Rule rule(PlannedTask task) {
		return GardenPlanner.PACKS.find(task.rule()).orElseThrow();
	}

	/** It would push soft growth into the first freezes. */
	@ParameterizedTest
	@EnumSource(value = GardenClimate.class, mode = EnumSource.Mode.EXCLUDE, names = "FROST_FREE_COAST")
	void noWoodyPlantIsFedInLateSummer(GardenClimate climate) {
		List<PlannedTask> feeding = dos(climate, "US-NY", Work.FEED, in("woody"));
		assertThat(feeding).isNotEmpty();
		for (int season = Garden.SEASON - 1; season <= Garden.SEASON + 1; season++) {
			LocalDate frost = date(climate, "first-fall-freeze 32F p50", season);
			assertThat(overlapping(feeding, frost.minusDays(TEN_WEEKS), frost.minusDays(LEAVES_DOWN))).isEmpty();
		}
	}

	/**
	 * Evergreens need six weeks of unfrozen ground to root, deciduous trees four. Bulbs
	 * and bare roots at rest are planted otherwise.
	 */
	@ParameterizedTest
	@EnumSource(value = GardenClimate.class, mode = EnumSource.Mode.EXCLUDE,
			names = { "FROST_FREE_COAST", "SOUTHERN_TABLELAND" })
	void nothingIsPlantedAfterTheFallCutOff(GardenClimate climate) {
		LocalDate frozen = date(climate, "ground-freeze p50", Garden.SEASON);
		LocalDate thawed = date(climate, "ground-thaw p50", Garden.SEASON + 1);
		assertThat(overlapping(dos(climate, "US-NY", Work.PLANT, in("evergreen")), frozen.minusDays(41),
				thawed.minusDays(1)))
			.isEmpty();
		assertThat(overlapping(dos(climate, "US-NY", Work.PLANT, in("woody", "perennial", "garlic", "fruit-tree")),
				frozen.minusDays(27), thawed.minusDays(1)))
			.isEmpty();
		assertThat(overlapping(dos(climate, "US-NY", Work.PLANT, (species) -> true), frozen, thawed.minusDays(1)))
			.isEmpty();
	}

	@ParameterizedTest
	@EnumSource(value = GardenClimate.class, mode = EnumSource.Mode.EXCLUDE, names = "FROST_FREE_COAST")
	void nothingTenderIsSetOutBeforeTheMiddleDateOfTheLastFreeze(GardenClimate climate) {
		List<PlannedTask> planting = dos(climate, "US-NY", Work.PLANT, in(TENDER.toArray(new String[0]))).stream()
			.filter((task) -> task.season() == Garden.SEASON)
			.toList();
		assertThat(planting).isNotEmpty();
		LocalDate freeze = date(climate, "last-spring-freeze 32F p50", Garden.SEASON);
		assertThat(planting)
			.filteredOn(
					(task) -> task.window()
						.from()
						.isBefore(in("tender-bulb", "warm-bulb").test(task.subject().species())
								? freeze.minusDays(BELOW_GROUND) : freeze))
			.extracting(TradeFactsTests::words)
			.isEmpty();
	}

	/** Oak wilt: its beetles fly, and fungal mats are fresh. */
	@ParameterizedTest
	@ValueSource(strings = { "US-MI", "US-WI", "US-MN" })
	void noOakIsPrunedFromAprilToJulyWhereOakWiltIs(String region) {
		for (GardenClimate climate : List.of(GardenClimate.COOL_INLAND, GardenClimate.COLD_CONTINENTAL)) {
			List<PlannedTask> pruning = dos(climate, region, Work.PRUNE, in("oak"));
			assertThat(pruning).isNotEmpty();
			for (int year = Garden.SEASON - 1; year <= Garden.SEASON + 1; year++) {
				assertThat(overlapping(pruning, LocalDate.of(year, 4, 1), LocalDate.of(year, 7, 31))).isEmpty();
			}
		}
	}

	/** Whoever can be hurt is told so. */
	@Test
	void whatNeedsPesticidesSawsOrLaddersCarriesACaution() {
		int found = 0;
		for (RulePack pack : GardenPlanner.PACKS.all()) {
			for (Rule rule : pack.rules()) {
				boolean dangerous = rule.work() == Work.TREAT
						|| rule.effort().tools().stream().anyMatch((tool) -> DANGEROUS_TOOL.matcher(tool).matches())
						|| DANGEROUS_WORD.matcher(rule.text().what()).matches();
				if (dangerous && (rule.kind() == TaskKind.DO || rule.kind() == TaskKind.RAMP_DAY)) {
					found++;
					assertThat(rule.text().caution()).as(pack.reference(rule)).isNotBlank();
				}
			}
		}
		assertThat(found).isGreaterThan(25);
	}

	static Stream<String> gardens() {
		return Gardens.ALL.stream().map(Garden::name);
	}

	@ParameterizedTest
	@MethodSource("gardens")
	void noTaskFallsIntoAHoldOffFromItsWorkInAGarden(String name) {
		noOverlap(GardenPlanner.plan(Gardens.named(name)).tasks());
	}

	@ParameterizedTest
	@EnumSource(GardenClimate.class)
	void noTaskFallsIntoAHoldOffFromItsWorkOnAnySpecies(GardenClimate climate) {
		noOverlap(tasks(climate, "US-IA"));
	}

	private static void noOverlap(List<PlannedTask> tasks) {
		Map<Object, List<PlannedTask>> holds = tasks.stream()
			.filter((task) -> task.kind() == TaskKind.HOLD_OFF)
			.collect(Collectors.groupingBy((task) -> task.subject().id()));
		for (PlannedTask task : tasks) {
			if (task.kind() != TaskKind.DO && task.kind() != TaskKind.RAMP_DAY) {
				continue;
			}
			for (PlannedTask hold : holds.getOrDefault(task.subject().id(), List.of())) {
				if (hold.work() == task.work() && hold.window().overlaps(task.window())) {
					assertThat(rule(task).despite()).as("%s in %s", words(task), words(hold)).contains(hold.rule());
				}
			}
		}
	}

}
