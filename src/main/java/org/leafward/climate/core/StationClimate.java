package org.leafward.climate.core;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.Station;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.core.heat.HeatMeasure;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * A station with its record and the samples already drawn from it. Safe for use by
 * threads.
 */
public final class StationClimate {

	/** A bound for the memory that odd thresholds could eat. */
	private static final int MOST_SAMPLES = 5_000;

	private final Station station;

	private final DailyRecord record;

	private final Map<Drawn, Sample> samples = new ConcurrentHashMap<>();

	private volatile @Nullable SoilTemperature soil;

	public StationClimate(Station station, DailyRecord record) {
		this.station = station;
		this.record = record;
	}

	public Station station() {
		return this.station;
	}

	public DailyRecord record() {
		return this.record;
	}

	/**
	 * The standard period of this station.
	 * @param hemisphere whose seasons
	 * @return see {@link SeasonPeriod#latest}
	 */
	public Optional<SeasonPeriod> period(Hemisphere hemisphere) {
		return SeasonPeriod.latest(this.record, hemisphere);
	}

	/**
	 * The seasons of this station in a period.
	 * @param normals which seasons are asked for
	 * @param hemisphere whose seasons
	 * @return see {@link SeasonPeriod#of}
	 */
	public Optional<SeasonPeriod> period(NormalsPeriod normals, Hemisphere hemisphere) {
		return (normals == NormalsPeriod.LATEST_30) ? period(hemisphere)
				: SeasonPeriod.of(normals, this.record, hemisphere);
	}

	/**
	 * The sample of an event at a place that may be colder than the station.
	 * @param key which event; its probability doesn't matter
	 * @param colderBy how much colder the place is, °C
	 * @param hemisphere the place's hemisphere
	 * @param period which seasons
	 * @return the sample; drawn only once
	 */
	public Sample sample(MarkerKey key, double colderBy, Hemisphere hemisphere, SeasonPeriod period) {
		return sample(drawn(key.kind(), key.threshold(), key.goal(), colderBy, hemisphere, period));
	}

	/**
	 * The sample of an event at a place that may be colder than the station.
	 * @param kind which event, but no sum of heat
	 * @param threshold the temperature at the place, for the kinds that need one
	 * @param colderBy how much colder the place is, °C
	 * @param hemisphere the place's hemisphere
	 * @param period which seasons
	 * @return the sample; drawn only once
	 */
	public Sample sample(MarkerKind kind, @Nullable TemperatureThreshold threshold, double colderBy,
			Hemisphere hemisphere, SeasonPeriod period) {
		return sample(drawn(kind, threshold, null, colderBy, hemisphere, period));
	}

	private Sample sample(Drawn drawn) {
		Sample known = this.samples.get(drawn);
		if (known != null) {
			return known;
		}
		Sample sample = Sample.ofDates(outcomes(drawn));
		if (this.samples.size() < MOST_SAMPLES) {
			this.samples.put(drawn, sample);
		}
		return sample;
	}

	/**
	 * The seasons one by one.
	 * @param kind which event, but no sum of heat
	 * @param threshold the temperature at the place, for the kinds that need one
	 * @param colderBy how much colder the place is, °C
	 * @param hemisphere the place's hemisphere
	 * @param period which seasons
	 * @return one outcome for each season, in order
	 */
	public List<SeasonOutcome> outcomes(MarkerKind kind, @Nullable TemperatureThreshold threshold, double colderBy,
			Hemisphere hemisphere, SeasonPeriod period) {
		return outcomes(drawn(kind, threshold, null, colderBy, hemisphere, period));
	}

	private List<SeasonOutcome> outcomes(Drawn drawn) {
		return drawn.period.stream(drawn.hemisphere).map((season) -> outcome(drawn, season)).toList();
	}

	private SeasonOutcome outcome(Drawn drawn, Season season) {
		return switch (drawn.kind) {
			case LAST_SPRING_FREEZE -> FreezeSearch.lastSpring(this.record, season, drawn.limit);
			case FIRST_FALL_FREEZE -> FreezeSearch.firstFall(this.record, season, drawn.limit);
			case NIGHTS_WARM_TO -> NightSearch.warmTo(this.record, season, drawn.limit);
			case NIGHTS_COOL_TO -> NightSearch.coolTo(this.record, season, drawn.limit);
			case GROUND_FREEZE -> GroundSearch.freeze(soil(), season, drawn.limit / 100.0);
			case GROUND_THAW -> GroundSearch.thaw(soil(), season, drawn.limit / 100.0);
			case SOIL_WARMS_TO -> CrossingSearch.rise(soil()::celsius, GroundSearch.DAYS,
					drawn.limit * GroundSearch.DAYS / 100.0, season);
			case SOIL_COOLS_TO -> CrossingSearch.fall(soil()::celsius, GroundSearch.DAYS,
					drawn.limit * GroundSearch.DAYS / 100.0, season);
			case DAYS_COOL_TO ->
				CrossingSearch.fall(DailyTemperature.MAXIMUM.of(this.record), NightSearch.NIGHTS, drawn.limit, season);
			case DEGREE_DAYS -> DegreeDaySearch.reach(this.record, season, measure(drawn),
					Objects.requireNonNull(drawn.goal), drawn.limit / 100.0);
		};
	}

	private static HeatMeasure measure(Drawn drawn) {
		TemperatureThreshold base = Objects.requireNonNull(drawn.base);
		return HeatMeasure.average(base.degrees(), base.fahrenheit());
	}

	private Drawn drawn(MarkerKind kind, @Nullable TemperatureThreshold threshold, @Nullable HeatGoal goal,
			double colderBy, Hemisphere hemisphere, SeasonPeriod period) {
		if (kind.needsGoal() && (goal == null || threshold == null)) {
			throw new IllegalArgumentException("degree-days need a base and a sum");
		}
		return new Drawn(kind, limit(kind, threshold, colderBy), kind.needsGoal() ? threshold : null, goal, hemisphere,
				period);
	}

	private int limit(MarkerKind kind, @Nullable TemperatureThreshold threshold, double colderBy) {
		if (threshold == null) {
			return Limits.ground(colderBy);
		}
		return switch (kind) {
			case NIGHTS_WARM_TO -> Limits.warmNights(threshold, colderBy);
			case NIGHTS_COOL_TO, DAYS_COOL_TO -> Limits.coolNights(threshold, colderBy);
			case SOIL_WARMS_TO, SOIL_COOLS_TO -> Limits.soil(threshold, colderBy);
			case DEGREE_DAYS -> Limits.ground(colderBy);
			default -> Limits.minimum(threshold, colderBy, this.station.id());
		};
	}

	private SoilTemperature soil() {
		SoilTemperature known = this.soil;
		if (known == null) {
			known = SoilTemperature.estimate(this.record);
			this.soil = known;
		}
		return known;
	}

	private record Drawn(MarkerKind kind, int limit, @Nullable TemperatureThreshold base, @Nullable HeatGoal goal,
			Hemisphere hemisphere, SeasonPeriod period) {
	}

}
