package org.leafward.care.core.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Bounds;
import org.leafward.care.core.rule.Concern;
import org.leafward.care.core.rule.Days;
import org.leafward.care.core.rule.Effort;
import org.leafward.care.core.rule.Grade;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.RulePack;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.care.core.rule.Source;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Timing;
import org.leafward.care.core.rule.Variant;
import org.leafward.care.core.rule.Weather;
import org.leafward.care.core.rule.Where;
import org.leafward.care.core.rule.Work;
import org.leafward.care.core.rule.YearsSincePlanting;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Explanation;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.SeasonDay;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;

/**
 * Small subjects, rules and markers for planning. The dates are those of the zone 6
 * example year.
 */
final class PlanFixture {

	static final MarkerKey SPRING = key(MarkerKind.LAST_SPRING_FREEZE, "32F", 50);

	static final MarkerKey FALL = key(MarkerKind.FIRST_FALL_FREEZE, "32F", 50);

	static final MarkerKey GROUND = key(MarkerKind.GROUND_FREEZE, null, 50);

	static final MarkerKey THAW = key(MarkerKind.GROUND_THAW, null, 50);

	static final SiteFacts LOAM = new SiteFacts("US-MI", "Washtenaw", SoilTexture.LOAM, Set.of());

	static final SiteId SITE = new SiteId(UUID.fromString("00000000-0000-4000-8000-000000000002"));

	private PlanFixture() {
	}

	static MarkerKey key(MarkerKind kind, String threshold, int probability) {
		return new MarkerKey(kind, (threshold != null) ? TemperatureThreshold.parse(threshold) : null, probability);
	}

	static MarkerAnchor on(MarkerKey key, int days) {
		return new MarkerAnchor(key, Days.of(days), false, Bounds.NONE);
	}

	static MarkerAnchor onNext(MarkerKey key, int days) {
		return new MarkerAnchor(key, Days.of(days), true, Bounds.NONE);
	}

	static FixedMarkers markers() {
		return new FixedMarkers().with(SPRING, "04-20").with(FALL, "10-15").with(GROUND, "12-10").with(THAW, "03-05");
	}

	static Subject boxwoodPlantedOn(String date) {
		return planting(1, date, "hedge by the gate");
	}

	static Subject planting(int number, String date, String label) {
		return Subject.of(new Planting(new PlantingId(new UUID(0x4000L, 0x8000000000000000L + number)), SITE,
				new SpeciesId("buxus-sempervirens"), label, 12, LocalDate.parse(date), Placement.GROUND, false, false),
				new Species(new SpeciesId("buxus-sempervirens"), "Buxus sempervirens", "common boxwood", List.of(),
						List.of("boxwood", "broadleaf-evergreen"), Set.of(), null, List.of()));
	}

	static PlanSite site(PlaceMarkers markers) {
		return new PlanSite(SITE, Hemisphere.NORTH, LOAM, markers);
	}

	static PlanSite site(PlaceMarkers markers, Observed observed, WeatherAnswers weather) {
		return new PlanSite(SITE, Hemisphere.NORTH, LOAM, markers, observed, weather);
	}

	static Planner planner(RulePack... packs) {
		return new Planner(List.of(packs), Phenology.NONE);
	}

	/** A rule for boxwood in all its parts. */
	static Rule rule(String id, TaskKind kind, Work work, Timing timing, Weather weather, Set<String> despite,
			List<Variant> variants) {
		Rule plain = rule(id, TaskKind.WATCH, new Span(on(SPRING, 0), on(SPRING, 0), 0, 1));
		return new Rule(id, kind, work, plain.concern(), timing, variants, weather, despite, Effort.UNKNOWN,
				plain.text(), Map.of(), plain.sources());
	}

	/** What is stored of a plan's tasks. */
	static List<StoredTask> stored(Plan plan, TaskState state) {
		return plan.tasks()
			.stream()
			.map((task) -> new StoredTask(task.id(), task.planting(), task.plant(), task.rule(), task.season(),
					task.kind(), task.work(), task.window(), task.wording().name(), state, name(task.explanation())))
			.toList();
	}

	static UUID name(Explanation explanation) {
		return TaskIdentity.named(explanation.toString());
	}

	static Rule rule(String id, TaskKind kind, Timing timing) {
		return new Rule(id, kind, Work.PRUNE,
				new Concern(Set.of("boxwood"), Set.of(), Set.of(), Set.of(), Set.of(), null, null, null,
						YearsSincePlanting.ANY, Set.of(), Where.ANYWHERE, Set.of(), null),
				timing, List.of(), Weather.ANY, Set.of(), Effort.UNKNOWN,
				new TaskText("Do " + id, "Do it.", null, "It helps.", null, null), Map.of(),
				List.of(new Source("Practice", null, null, Grade.COMMON_PRACTICE)));
	}

	static RulePack pack(Rule... rules) {
		return new RulePack("test", 1, "Test rules", "Anywhere.", List.of(rules));
	}

	/** Markers with the same day every season. */
	static final class FixedMarkers implements PlaceMarkers {

		private final Map<MarkerKey, String> days = new HashMap<>();

		private int later;

		private OptionalDouble freezes = OptionalDouble.empty();

		/** The share of years with a freeze, to any temperature. */
		FixedMarkers freezing(double share) {
			this.freezes = OptionalDouble.of(share);
			return this;
		}

		@Override
		public OptionalDouble yearsWithFreeze(TemperatureThreshold threshold) {
			return this.freezes;
		}

		/** All dates so many days later. */
		FixedMarkers later(int number) {
			this.later = number;
			return this;
		}

		FixedMarkers with(MarkerKey key, String monthDay) {
			this.days.put(key, monthDay);
			return this;
		}

		FixedMarkers without(MarkerKey key) {
			this.days.remove(key);
			return this;
		}

		@Override
		public Optional<SeasonMarker> on(MarkerKey key, int season) {
			return Optional.ofNullable(this.days.get(key)).map((day) -> {
				LocalDate date = SeasonDay
					.toDate(SeasonDay.of(LocalDate.parse(season + "-" + day), season) + this.later, season);
				return new SeasonMarker(key, season, date, date, date, Explanation.of(key.code(), date.toString()));
			});
		}

		@Override
		public String whyMissing(MarkerKey key) {
			return "No station tells " + key.code() + ".";
		}

	}

}
