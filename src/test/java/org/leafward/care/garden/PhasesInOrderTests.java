package org.leafward.care.garden;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.care.core.phase.Phase;
import org.leafward.care.core.plan.Observed;
import org.leafward.care.core.plan.PlanSite;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.care.core.plan.Planner;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.plan.WeatherAnswers;
import org.leafward.care.core.rule.Bounds;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.Days;
import org.leafward.care.core.rule.Effort;
import org.leafward.care.core.rule.Grade;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.care.core.rule.Source;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Weather;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.Season;
import org.leafward.plants.Species;
import org.leafward.register.Placement;
import org.leafward.register.PlantingId;
import org.leafward.register.SoilTexture;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Whatever was seen of a planting, its phases stay in the order in which they are
 * expected on such a plant. With the configured phenology, any species and climate, made
 * up from seeds.
 */
class PhasesInOrderTests {

	/** Farther from the estimate than any real spring. */
	private static final int MOST_DAYS_OFF = 60;

	private static final Planner PLANNER = new Planner(List.of(pack()), GardenPlanner.PACKS.phenology());

	static IntStream seeds() {
		return IntStream.range(0, 400);
	}

	@ParameterizedTest
	@MethodSource("seeds")
	void phasesStayInOrderAfterAnyObservation(int seed) {
		Random random = new Random(seed);
		List<Species> all = Garden.allSpecies();
		Species species = all.get(random.nextInt(all.size()));
		GardenClimate climate = GardenClimate.values()[random.nextInt(GardenClimate.values().length)];
		Map<String, LocalDate> usual = days(climate, species, Map.of());
		Map<String, LocalDate> seen = seen(usual, 1 + random.nextInt(3), random);
		Map<String, LocalDate> now = days(climate, species, seen);
		assertThat(now).containsAllEntriesOf(seen).containsOnlyKeys(usual.keySet());
		usual.forEach((phase, day) -> usual.forEach((later, laterDay) -> {
			if (day.isBefore(laterDay)) {
				assertThat(now.get(phase))
					.as("%s before %s of %s in %s, seen %s, usually %s", phase, later, species.commonName(), climate,
							seen, usual)
					.isBeforeOrEqualTo(now.get(later));
			}
		}));
	}

	/** Some phases seen on days that are in order themselves. */
	private static Map<String, LocalDate> seen(Map<String, LocalDate> usual, int number, Random random) {
		List<Map.Entry<String, LocalDate>> entries = new ArrayList<>(new TreeMap<>(usual).entrySet());
		List<Map.Entry<String, LocalDate>> chosen = new ArrayList<>();
		for (int i = 0; i < number && !entries.isEmpty(); i++) {
			chosen.add(entries.remove(random.nextInt(entries.size())));
		}
		chosen.sort(Map.Entry.comparingByValue());
		Map<String, LocalDate> seen = new HashMap<>();
		LocalDate last = LocalDate.of(Garden.SEASON, 1, 1);
		for (Map.Entry<String, LocalDate> one : chosen) {
			LocalDate day = one.getValue().plusDays(random.nextInt(2 * MOST_DAYS_OFF) - MOST_DAYS_OFF);
			last = day.isBefore(last) ? last : day;
			seen.put(one.getKey(), last);
		}
		return seen;
	}

	private static Map<String, LocalDate> days(GardenClimate climate, Species species, Map<String, LocalDate> seen) {
		Garden garden = Garden.of("phases", climate, new SiteFacts("", "", SoilTexture.LOAM, Set.of()), "2026-01-01",
				"");
		Subject planting = garden.subject(species.id().value(), "one", 1, LocalDate.of(2015, 4, 1), Placement.GROUND,
				"");
		PlanSite site = new PlanSite(garden.id(), garden.hemisphere(), garden.facts(), garden.markers(), logged(seen),
				WeatherAnswers.UNKNOWN);
		Map<String, LocalDate> days = new HashMap<>();
		for (PlannedTask task : PLANNER
			.plan(site, List.of(planting), List.of(new Season(Garden.SEASON, garden.hemisphere())), garden.today())
			.tasks()) {
			days.put(task.rule().substring("phases/".length()), task.window().from());
		}
		return days;
	}

	private static Observed logged(Map<String, LocalDate> seen) {
		return new Observed() {

			@Override
			public Optional<LocalDate> phase(PlantingId planting, String phase, int season) {
				return Optional.ofNullable(seen.get(phase));
			}

			@Override
			public Optional<LocalDate> event(@Nullable PlantingId planting, String event, int season) {
				return Optional.empty();
			}

			@Override
			public String log() {
				return seen.toString();
			}

		};
	}

	/** A rule for each phase, on its day. */
	private static RulePack pack() {
		return new RulePack("phases", 1, "Phases", "Anywhere.",
				GardenPlanner.PACKS.phenology().phases().stream().map(PhasesInOrderTests::rule).toList());
	}

	private static Rule rule(Phase phase) {
		PhaseAnchor day = new PhaseAnchor(phase.name(), Days.of(0), false, Bounds.NONE);
		return new Rule(phase.name(), TaskKind.WATCH, Work.SCOUT, Concern.ANY_PLANT, new Span(day, day, 0, 1),
				List.of(), Weather.ANY, Set.of(), Effort.UNKNOWN,
				new TaskText("Look for " + phase.name(), "Look.", null, "It helps.", null, null), Map.of(),
				List.of(new Source("Common practice", null, null, Grade.COMMON_PRACTICE)));
	}

}
