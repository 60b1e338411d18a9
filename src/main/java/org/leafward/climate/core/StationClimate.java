package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.Station;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * A station with the statistics already drawn from its record: the dates of an event in
 * every season for all limits at once, so that the record itself is seldom needed again.
 * Sums of heat have no such form; they are drawn from the record for each place, all that
 * are counted alike in one walk. Safe for use by threads.
 */
public final class StationClimate {

	/** A bound for the memory that many periods could eat. */
	private static final int MOST_STEPS = 40;

	private static final TemperatureThreshold FREEZING = new TemperatureThreshold(0, false);

	private final Station station;

	private final Supplier<DailyRecord> source;

	private final Map<Stepped, LimitSteps> steps = new ConcurrentHashMap<>(2);

	private final LastingHeat heat = new LastingHeat();

	private final Map<Hemisphere, Optional<SeasonPeriod>> periods = new ConcurrentHashMap<>(2);

	private final LastingSoil soil = new LastingSoil(SoilLayer.FOUR_INCHES);

	private final LastingSoil upperSoil = new LastingSoil(SoilLayer.UPPER);

	public StationClimate(Station station, DailyRecord record) {
		this(station, () -> record);
	}

	/**
	 * A station whose record lies elsewhere.
	 * @param station the station
	 * @param source gets the record; asked when something new is to be drawn, by several
	 * threads
	 */
	public StationClimate(Station station, Supplier<DailyRecord> source) {
		this.station = station;
		this.source = source;
	}

	public Station station() {
		return this.station;
	}

	public DailyRecord record() {
		return this.source.get();
	}

	/**
	 * The soil at 4 inches.
	 * @return as estimated from the record as it is now
	 */
	public SoilTemperature soil() {
		return this.soil.of(record());
	}

	/**
	 * The upper two inches of the soil.
	 * @return as estimated from the record as it is now
	 */
	public SoilTemperature upperSoil() {
		return this.upperSoil.of(record());
	}

	/**
	 * The standard period of this station.
	 * @param hemisphere whose seasons
	 * @return see {@link SeasonPeriod#latest}
	 */
	public Optional<SeasonPeriod> period(Hemisphere hemisphere) {
		return this.periods.computeIfAbsent(hemisphere, (key) -> SeasonPeriod.latest(record(), key));
	}

	/**
	 * The seasons of this station in a period.
	 * @param normals which seasons are asked for
	 * @param hemisphere whose seasons
	 * @return see {@link SeasonPeriod#of}
	 */
	public Optional<SeasonPeriod> period(NormalsPeriod normals, Hemisphere hemisphere) {
		return (normals == NormalsPeriod.LATEST_30) ? period(hemisphere)
				: SeasonPeriod.of(normals, record(), hemisphere);
	}

	/**
	 * The sample of an event at a place that may be colder than the station.
	 * @param key which event; its probability doesn't matter
	 * @param colderBy how much colder the place is, °C
	 * @param hemisphere the place's hemisphere
	 * @param period which seasons
	 * @return the sample
	 */
	public Sample sample(MarkerKey key, double colderBy, Hemisphere hemisphere, SeasonPeriod period) {
		return (key.kind() == MarkerKind.DEGREE_DAYS) ? heat(key, colderBy, hemisphere, period)
				: sample(key.kind(), key.threshold(), colderBy, hemisphere, period);
	}

	/**
	 * The sample of an event at a place that may be colder than the station.
	 * @param kind which event, but no sum of heat
	 * @param threshold the temperature at the place, for the kinds that need one
	 * @param colderBy how much colder the place is, °C
	 * @param hemisphere the place's hemisphere
	 * @param period which seasons
	 * @return the sample
	 */
	public Sample sample(MarkerKind kind, @Nullable TemperatureThreshold threshold, double colderBy,
			Hemisphere hemisphere, SeasonPeriod period) {
		return sample(drawn(kind, threshold, colderBy, hemisphere, period));
	}

	private Sample sample(Drawn drawn) {
		int limit = StationSteps.limit(drawn.kind, drawn.limit);
		return steps(drawn, limit).at(limit);
	}

	private Sample heat(MarkerKey key, double colderBy, Hemisphere hemisphere, SeasonPeriod period) {
		HeatGoal goal = Objects.requireNonNull(key.goal());
		LastingHeat.Count count = new LastingHeat.Count(Objects.requireNonNull(key.threshold()), goal.start());
		return this.heat.of(this.source, count, new LastingHeat.Place(Limits.ground(colderBy), hemisphere, period),
				goal.sum());
	}

	private LimitSteps steps(Drawn drawn, int limit) {
		Stepped stepped = new Stepped(drawn.kind, drawn.hemisphere, drawn.period);
		LimitSteps known = this.steps.get(stepped);
		if (known != null && known.window().has(limit)) {
			return known;
		}
		LimitSteps.Window window = StationSteps.around(drawn.kind, limit);
		DailyRecord record = record();
		LimitSteps drawnSteps = StationSteps.of(drawn.kind, record, () -> soil(record, drawn.kind), drawn.hemisphere,
				drawn.period, (known != null) ? window.with(known.window()) : window);
		if (known != null || this.steps.size() < MOST_STEPS) {
			this.steps.put(stepped, drawnSteps);
		}
		return drawnSteps;
	}

	/**
	 * About how much memory the statistics take.
	 * @return bytes
	 */
	public long bytes() {
		return this.steps.values().stream().mapToLong(LimitSteps::bytes).sum() + this.heat.bytes() + 500;
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
		return outcomes(drawn(kind, threshold, colderBy, hemisphere, period));
	}

	/**
	 * The freeze of a spring or a fall that may not be over.
	 * @param kind {@link MarkerKind#LAST_SPRING_FREEZE} or
	 * {@link MarkerKind#FIRST_FALL_FREEZE}
	 * @param threshold the temperature at the place
	 * @param colderBy how much colder the place is, °C
	 * @param season the season
	 * @param last last day that counts; what comes after it is not missing
	 * @return the date, or none seen so far, or left out for missing days
	 * @throws IllegalArgumentException for another event
	 */
	public SeasonOutcome freezeSoFar(MarkerKind kind, TemperatureThreshold threshold, double colderBy, Season season,
			LocalDate last) {
		int limit = limit(kind, threshold, colderBy);
		return switch (kind) {
			case LAST_SPRING_FREEZE -> FreezeSearch.lastSpring(record(), season, limit, last);
			case FIRST_FALL_FREEZE -> FreezeSearch.firstFall(record(), season, limit, last);
			default -> throw new IllegalArgumentException(kind.code() + " is no freeze");
		};
	}

	private List<SeasonOutcome> outcomes(Drawn drawn) {
		DailyRecord record = record();
		return drawn.period.stream(drawn.hemisphere).map((season) -> outcome(record, drawn, season)).toList();
	}

	private SeasonOutcome outcome(DailyRecord record, Drawn drawn, Season season) {
		return switch (drawn.kind) {
			case LAST_SPRING_FREEZE -> FreezeSearch.lastSpring(record, season, drawn.limit);
			case FIRST_FALL_FREEZE -> FreezeSearch.firstFall(record, season, drawn.limit);
			case NIGHTS_WARM_TO -> NightSearch.warmTo(record, season, drawn.limit);
			case NIGHTS_COOL_TO -> NightSearch.coolTo(record, season, drawn.limit);
			case GROUND_FREEZE -> GroundSearch.freeze(soil(record, drawn.kind), season, drawn.limit / 100.0);
			case GROUND_THAW -> GroundSearch.thaw(soil(record, drawn.kind), season, drawn.limit / 100.0);
			case SOIL_WARMS_TO, UPPER_SOIL_WARMS_TO -> CrossingSearch.rise(soil(record, drawn.kind)::celsius,
					GroundSearch.DAYS, drawn.limit * GroundSearch.DAYS / 100.0, season);
			case SOIL_COOLS_TO, UPPER_SOIL_COOLS_TO -> CrossingSearch.fall(soil(record, drawn.kind)::celsius,
					GroundSearch.DAYS, drawn.limit * GroundSearch.DAYS / 100.0, season);
			case DAYS_COOL_TO ->
				CrossingSearch.fall(DailyTemperature.MAXIMUM.of(record), NightSearch.NIGHTS, drawn.limit, season);
			case DE_ICING_END -> IcyDays.lastSpring(record, season, drawn.limit);
			case DAYLIGHT_LENGTHENS_TO, DAYLIGHT_SHORTENS_TO, DEGREE_DAYS ->
				throw new IllegalArgumentException(drawn.kind.code() + " is not drawn season by season");
		};
	}

	private Drawn drawn(MarkerKind kind, @Nullable TemperatureThreshold threshold, double colderBy,
			Hemisphere hemisphere, SeasonPeriod period) {
		return new Drawn(kind, limit(kind, threshold, colderBy), hemisphere, period);
	}

	private int limit(MarkerKind kind, @Nullable TemperatureThreshold threshold, double colderBy) {
		if (kind == MarkerKind.DE_ICING_END) {
			return Limits.minimum(FREEZING, colderBy, this.station.id());
		}
		if (threshold == null) {
			return Limits.ground(colderBy);
		}
		return switch (kind) {
			case NIGHTS_WARM_TO -> Limits.warmNights(threshold, colderBy);
			case NIGHTS_COOL_TO, DAYS_COOL_TO -> Limits.coolNights(threshold, colderBy);
			case SOIL_WARMS_TO, SOIL_COOLS_TO, UPPER_SOIL_WARMS_TO, UPPER_SOIL_COOLS_TO ->
				Limits.soil(threshold, colderBy);
			default -> Limits.minimum(threshold, colderBy, this.station.id());
		};
	}

	private SoilTemperature soil(DailyRecord record, MarkerKind kind) {
		boolean upper = kind == MarkerKind.UPPER_SOIL_WARMS_TO || kind == MarkerKind.UPPER_SOIL_COOLS_TO;
		return (upper ? this.upperSoil : this.soil).of(record);
	}

	private record Stepped(MarkerKind kind, Hemisphere hemisphere, SeasonPeriod period) {
	}

	private record Drawn(MarkerKind kind, int limit, Hemisphere hemisphere, SeasonPeriod period) {
	}

}
