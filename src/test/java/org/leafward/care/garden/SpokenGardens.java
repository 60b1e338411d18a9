package org.leafward.care.garden;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.amounts.Amount;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.limits.WateringLimit;
import org.leafward.amounts.limits.WateringLimitTable;
import org.leafward.care.TaskText;
import org.leafward.care.core.amount.PlantCover;
import org.leafward.care.core.amount.PlantLight;
import org.leafward.care.core.amount.PlantSoil;
import org.leafward.care.core.amount.PlantWater;
import org.leafward.care.core.plan.Figures;
import org.leafward.care.core.plan.Gap;
import org.leafward.care.core.plan.Observed;
import org.leafward.care.core.plan.Plan;
import org.leafward.care.core.plan.PlanSite;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.plan.TestedSoil;
import org.leafward.care.core.plan.WeatherAnswers;
import org.leafward.care.core.rule.Condition;
import org.leafward.care.core.rule.Computes;
import org.leafward.care.core.rule.RampLight;
import org.leafward.care.core.rule.Rule;
import org.leafward.climate.Microclimate;
import org.leafward.climate.StateQuestion;
import org.leafward.climate.WaterView;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;
import org.leafward.register.Site;
import org.leafward.register.SiteBeds;
import org.leafward.register.SiteId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTestId;
import org.leafward.register.Sun;
import org.leafward.register.WateredDepths;
import org.leafward.register.Wind;

/**
 * All that the golden gardens are told on days of a whole year, whatever the weather,
 * whatever was logged, with and without sizes of the plantings.
 */
final class SpokenGardens {

	private static final List<String> LIMITED = List.of("", "Merrow County", "Sable County");

	private static final WateringLimitTable LIMITS = new WateringLimitTable(new KnowledgeFiles(""),
			new KnowledgeReader());

	private final Set<String> texts = new TreeSet<>();

	private final Set<String> reasons = new TreeSet<>();

	private final Set<String> names = new TreeSet<>();

	/** Plans all gardens. */
	static SpokenGardens all() {
		SpokenGardens all = new SpokenGardens();
		int turn = 0;
		for (Garden garden : Gardens.ALL) {
			for (int month = 0; month < 12; month++) {
				LocalDate today = garden.today().plusMonths(month);
				for (Boolean weather : List.of(true, false)) {
					all.take(garden, today, weather, turn++);
				}
				// Nothing known, nothing sized.
				all.take(GardenPlanner.plan(new PlanSite(garden.id(), garden.hemisphere(), garden.facts(),
						garden.markers(), garden.observed(), WeatherAnswers.UNKNOWN), garden.subjects(), today));
			}
		}
		return all;
	}

	Set<String> texts() {
		return this.texts;
	}

	/** Why tasks are withdrawn. */
	Set<String> reasons() {
		return this.reasons;
	}

	Set<String> names() {
		return this.names;
	}

	private void take(Garden garden, LocalDate today, boolean holds, int turn) {
		List<Subject> subjects = garden.subjects().stream().map((one) -> sized(one, turn)).toList();
		Made figures = new Made(site(garden, turn), today, turn);
		take(GardenPlanner.plan(new PlanSite(garden.id(), garden.hemisphere(), garden.facts(), garden.markers(),
				holds ? seen(garden, today) : garden.observed(), (condition, day) -> answer(condition, holds), figures),
				subjects, today));
	}

	private void take(Plan plan) {
		for (PlannedTask task : plan.tasks()) {
			TaskText text = task.text();
			Stream.of(text.title(), text.what(), text.amount(), text.why(), text.otherwise(), text.caution())
				.filter((one) -> one != null && !one.isBlank())
				.forEach(this.texts::add);
			if (task.because() != null) {
				this.reasons.add(task.because());
			}
			this.names.add((task.subject().species() != null) ? task.subject().species().commonName()
					: task.subject().words());
		}
		for (Gap gap : plan.gaps()) {
			this.reasons.add("It has no days any more: " + gap.reason());
		}
	}

	/** As the server answers, with words of the question. */
	private static WeatherAnswers.Answer answer(Condition condition, boolean holds) {
		Optional<StateQuestion> question = condition.question();
		return new WeatherAnswers.Answer(holds,
				question.isPresent() ? Explanation.of(question.get().words(), holds ? "yes" : "no") : Explanation.of(
						"Water in the root zone",
						(holds ? "dry" : "moist enough") + "; 41 mm are missing, plants feel it from 35 mm on"));
	}

	/** Everything that can be logged was, the other day. */
	private static Observed seen(Garden garden, LocalDate today) {
		return new Observed() {

			@Override
			public Optional<LocalDate> phase(PlantingId planting, String phase, int season) {
				return garden.observed().phase(planting, phase, season);
			}

			@Override
			public Optional<LocalDate> event(@Nullable PlantingId planting, String event, int season) {
				return Optional.of(today.minusDays(5));
			}

			@Override
			public String log() {
				return "";
			}

		};
	}

	private static Subject sized(Subject subject, int turn) {
		Planting one = subject.planting();
		List<PlantingSize> sizes = List.of(new PlantingSize(12.0, 64.0, 20.0), new PlantingSize(null, 5.0, 0.4),
				new PlantingSize(0.3, 1200.0, 400.0));
		RaisedIn[] places = RaisedIn.values();
		return Subject.of(new Planting(one.id(), one.site(), one.species(), one.label(), one.count(), one.plantedOn(),
				one.placement(), one.wintersIndoors(), one.saltExposed(), sizes.get(turn % sizes.size()),
				new Raised(places[turn % places.length], null, null)), subject.species());
	}

	private static Site site(Garden garden, int turn) {
		double latitude = (garden.hemisphere() == Hemisphere.NORTH) ? 42 : -35;
		GeoPoint point = new GeoPoint(latitude, (latitude > 0) ? -91 : 149, 200);
		return new Site(new SiteId(garden.id().value()), new PersonId(new UUID(1, 1)), "Garden",
				LIMITED.get(turn % LIMITED.size()), point,
				ZoneId.of((latitude > 0) ? "America/Chicago" : "Australia/Sydney"), garden.facts().soil(),
				Sun.values()[turn % Sun.values().length], Wind.AVERAGE, Microclimate.NONE, "", Set.of(),
				(turn % 2 == 0) ? 12.0 : null);
	}

	/** Figures as the server makes them. */
	private static final class Made implements Figures {

		private final PlantLight light;

		private final PlantWater water;

		private final PlantCover cover;

		private final PlantSoil soil;

		Made(Site site, LocalDate today, int turn) {
			this.light = new PlantLight(site);
			WateringLimit limit = LIMITS.of(site.county()).orElse(null);
			this.water = new PlantWater(SiteBeds.none(site), today, WateredDepths.NONE,
					(roots, given) -> Optional.of(view(today, turn)), limit);
			this.cover = new PlantCover((day) -> OptionalDouble.of(3 - turn % 9));
			this.soil = new PlantSoil(site.soil(), tests(site, today, turn));
		}

		private static WaterView view(LocalDate today, int turn) {
			return new WaterView(70, List.of(new WaterView.Day(today.minusDays(1), 0, 0, 4, 4, 0, (7 * turn) % 60, 35,
					1, false, false, false, 10 + turn % 25, true)), Explanation.of("Water of the bed", "some"));
		}

		private static List<KeptSoilTest> tests(Site site, LocalDate today, int turn) {
			List<KeptSoilTest> all = new ArrayList<>();
			SoilDrainage[] drainages = SoilDrainage.values();
			all.add(new KeptSoilTest(new SoilTestId(new UUID(2, turn)), site.id(), null, today.minusDays(10),
					new SoilFigures((turn % 3 == 0) ? 5.5 : 7.8, 1 + turn % 8, SoilExtract.SATURATED_PASTE, null,
							(turn % 2 == 0) ? 24.0 : 4.0, (turn % 4 == 0) ? Double.valueOf(18) : null),
					15, drainages[turn % drainages.length], "", null, Instant.EPOCH));
			return all;
		}

		@Override
		public Optional<Amount> amount(Rule rule, Subject subject, DayWindow window) {
			Computes computes = rule.computes();
			return (computes == null) ? Optional.empty() : switch (computes) {
				case COVER -> this.cover.amount(rule.hurt(), subject, window);
				case GYPSUM, TESTED_LEACHING -> this.soil.amount(computes, subject, window);
				default -> this.water.amount(computes, subject, window);
			};
		}

		@Override
		public Optional<TestedSoil> soil(Subject subject) {
			return this.soil.tested(subject);
		}

		@Override
		public Optional<HardeningRamp> ramp(RampLight way, Subject subject, LocalDate first, int days) {
			return this.light.ramp(way, subject, first, days);
		}

		@Override
		public List<Amount> steps(RampLight way, Subject subject, LocalDate first, int days) {
			return this.light.steps(way, subject, first, days);
		}

	}

}
