package org.leafward.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import org.leafward.care.core.plan.Plan;
import org.leafward.care.core.plan.PlanFingerprint;
import org.leafward.care.core.plan.PlanSite;
import org.leafward.care.core.plan.Planner;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.SiteFacts;
import org.leafward.care.pack.ConfiguredPacks;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Explanation;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.Species;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Planning with the shipped packs and warm markers: sites of twenty plantings, as a
 * register of a million plantings at fifty thousand sites has, over all species. One
 * operation is one planting in one season. Target: 200,000 a second on one core.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class PlanBenchmark {

	private static final RulePacks PACKS = ConfiguredPacks.read();

	private static final int SITES = 50;

	private static final int PLANTINGS = 20;

	private static final int SEASONS = 3;

	private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

	private final Season season = new Season(2026, Hemisphere.NORTH);

	private final List<Season> seasons = List.of(this.season.previous(), this.season, this.season.next());

	private final List<PlanSite> sites = new ArrayList<>();

	private final List<List<Subject>> plantings = new ArrayList<>();

	private Planner planner;

	/** Reads packs and catalogue, makes up the plantings, and asks for every marker once. */
	@Setup
	public void prepare() {
		List<Species> species = CatalogueFixture.configured().all();
		this.planner = new Planner(PACKS.all(), PACKS.phenology());
		SplittableRandom random = new SplittableRandom(4);
		for (int i = 0; i < SITES; i++) {
			SiteId site = new SiteId(new UUID(i, 1));
			List<Subject> own = new ArrayList<>();
			for (int j = 0; j < PLANTINGS; j++) {
				Species one = species.get(random.nextInt(species.size()));
				own.add(Subject.of(
						new Planting(new PlantingId(new UUID(i, 100 + j)), site, one.id(), "bed " + j, 3,
								LocalDate.of(2010, 1, 1).plusDays(random.nextInt(6_500)),
								(random.nextInt(8) == 0) ? Placement.CONTAINER : Placement.GROUND,
								random.nextInt(12) == 0, random.nextInt(10) == 0),
						one));
			}
			this.plantings.add(own);
			this.sites.add(new PlanSite(site, Hemisphere.NORTH,
					new SiteFacts("US-MI", "Washtenaw", SoilTexture.LOAM, Set.of()), new Warm(random.nextInt(40))));
		}
		long tasks = 0;
		for (int i = 0; i < SITES; i++) {
			tasks += this.planner.plan(this.sites.get(i), this.plantings.get(i), this.seasons, TODAY).tasks().size();
		}
		System.out.printf("%.1f tasks for a planting and season, %d rules%n",
				tasks / (double) (SITES * PLANTINGS * SEASONS),
				PACKS.all().stream().mapToInt((pack) -> pack.rules().size()).sum());
	}

	/** Plans. */
	@Benchmark
	@OperationsPerInvocation(SITES * PLANTINGS * SEASONS)
	public int plan() {
		int tasks = 0;
		for (int i = 0; i < SITES; i++) {
			tasks += this.planner.plan(this.sites.get(i), this.plantings.get(i), this.seasons, TODAY).tasks().size();
		}
		return tasks;
	}

	/** Plans and works out the fingerprint, as a derivation that changes nothing does. */
	@Benchmark
	@OperationsPerInvocation(SITES * PLANTINGS * SEASONS)
	public int planAndFingerprint() {
		int octets = 0;
		for (int i = 0; i < SITES; i++) {
			Plan plan = this.planner.plan(this.sites.get(i), this.plantings.get(i), this.seasons, TODAY);
			octets += PlanFingerprint.of(this.sites.get(i), plan, TODAY.toEpochDay())[0];
		}
		return octets;
	}

	/** Markers that were asked for before: a date for each by its kind. */
	private static final class Warm implements PlaceMarkers {

		private final int later;

		private final Map<MarkerKey, Map<Integer, Optional<SeasonMarker>>> markers = new HashMap<>();

		Warm(int later) {
			this.later = later;
		}

		@Override
		public Optional<SeasonMarker> on(MarkerKey key, int season) {
			return this.markers.computeIfAbsent(key, (one) -> new HashMap<>())
				.computeIfAbsent(season, (year) -> Optional.of(marker(key, year)));
		}

		private SeasonMarker marker(MarkerKey key, int year) {
			int day = switch (key.kind()) {
				case LAST_SPRING_FREEZE -> 100;
				case NIGHTS_WARM_TO -> 135;
				case GROUND_THAW -> 60;
				case SOIL_WARMS_TO -> 95;
				case UPPER_SOIL_WARMS_TO -> 92;
				case DE_ICING_END -> 85;
				case DAYLIGHT_LENGTHENS_TO -> 120;
				case DAYLIGHT_SHORTENS_TO -> 245;
				case UPPER_SOIL_COOLS_TO -> 278;
				case DEGREE_DAYS -> 130;
				case FIRST_FALL_FREEZE -> 275;
				case NIGHTS_COOL_TO -> 250;
				case SOIL_COOLS_TO -> 280;
				case DAYS_COOL_TO -> 285;
				case GROUND_FREEZE -> 320;
			};
			LocalDate date = LocalDate.ofYearDay(year, day + this.later);
			return new SeasonMarker(key, year, date, date.minusDays(12), date.plusDays(12),
					Explanation.of(key.code(), date.toString()));
		}

		@Override
		public String whyMissing(MarkerKey key) {
			return "";
		}

		@Override
		public OptionalDouble yearsWithFreeze(TemperatureThreshold threshold) {
			return OptionalDouble.of(1);
		}

	}

}
