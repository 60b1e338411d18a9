package org.leafward.climate.core;

import java.util.function.LongToDoubleFunction;
import java.util.function.Supplier;
import org.leafward.climate.MarkerKind;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;

/**
 * Draws the dates of an event for all limits at once. Where a higher limit is harder to
 * meet, limits are counted downward, so that the same steps serve.
 */
final class StationSteps {

	private StationSteps() {
	}

	/**
	 * The limit as the steps of a kind count it.
	 * @param kind which event
	 * @param limit from {@link Limits}
	 * @return the limit or its negative
	 */
	static int limit(MarkerKind kind, int limit) {
		return rising(kind) ? -limit : limit;
	}

	/**
	 * The limits around one that are likely to be asked for too: those of places up to
	 * 1.5 °C colder or warmer, which is 230 m of height.
	 * @param kind which event
	 * @param limit as the steps count it
	 * @return the limits
	 */
	static LimitSteps.Window around(MarkerKind kind, int limit) {
		int margin = switch (kind) {
			case LAST_SPRING_FREEZE, FIRST_FALL_FREEZE, DE_ICING_END -> 15;
			case NIGHTS_WARM_TO, NIGHTS_COOL_TO, DAYS_COOL_TO -> 15 * NightSearch.NIGHTS;
			default -> 150;
		};
		return new LimitSteps.Window(limit - margin, limit + margin);
	}

	private static boolean rising(MarkerKind kind) {
		return kind == MarkerKind.NIGHTS_WARM_TO || kind == MarkerKind.SOIL_WARMS_TO
				|| kind == MarkerKind.UPPER_SOIL_WARMS_TO;
	}

	/**
	 * Draws.
	 * @param kind which event, but no sum of heat and no daylight
	 * @param record the station's record
	 * @param soil its soil in the layer of the event, asked when it lies there
	 * @param hemisphere the place's hemisphere
	 * @param period which seasons
	 * @param window limits to keep
	 * @return the steps; the same answers as the searches give limit by limit
	 */
	static LimitSteps of(MarkerKind kind, DailyRecord record, Supplier<SoilTemperature> soil, Hemisphere hemisphere,
			SeasonPeriod period, LimitSteps.Window window) {
		LimitSteps.Builder out = new LimitSteps.Builder(period.seasons(), window);
		period.stream(hemisphere).forEach((season) -> season(out, kind, record, soil, season));
		return out.build();
	}

	private static void season(LimitSteps.Builder out, MarkerKind kind, DailyRecord record,
			Supplier<SoilTemperature> soil, Season season) {
		switch (kind) {
			case LAST_SPRING_FREEZE -> StepWalk.freeze(out, FreezeSearch.minimum(record), season, true);
			case FIRST_FALL_FREEZE -> StepWalk.freeze(out, FreezeSearch.minimum(record), season, false);
			case DE_ICING_END -> StepWalk.freeze(out, IcyDays.minimum(record), season, true);
			case NIGHTS_WARM_TO, NIGHTS_COOL_TO -> tenths(out, DailyTemperature.MINIMUM.of(record), season, kind);
			case DAYS_COOL_TO -> tenths(out, DailyTemperature.MAXIMUM.of(record), season, kind);
			case SOIL_WARMS_TO, SOIL_COOLS_TO, UPPER_SOIL_WARMS_TO, UPPER_SOIL_COOLS_TO ->
				soil(out, soil.get()::celsius, season, kind);
			case GROUND_FREEZE -> StepWalk.groundFreeze(out, soil.get(), season);
			case GROUND_THAW -> StepWalk.groundThaw(out, soil.get(), season);
			case DEGREE_DAYS, DAYLIGHT_LENGTHENS_TO, DAYLIGHT_SHORTENS_TO ->
				throw new IllegalArgumentException(kind.code() + " has no steps");
		}
	}

	private static void tenths(LimitSteps.Builder out, LongToDoubleFunction series, Season season, MarkerKind kind) {
		boolean rising = rising(kind);
		StepWalk.crossing(out, series, NightSearch.NIGHTS, season, rising, (sum) -> StepLimits
			.least((int) (rising ? -sum : sum), (limit) -> CrossingSearch.meets(sum, rising ? -limit : limit, rising)));
	}

	private static void soil(LimitSteps.Builder out, LongToDoubleFunction series, Season season, MarkerKind kind) {
		boolean rising = rising(kind);
		double perLimit = GroundSearch.DAYS / 100.0;
		StepWalk.crossing(out, series, GroundSearch.DAYS, season, rising, (sum) -> StepLimits.least(
				(int) Math.round((rising ? -sum : sum) / perLimit),
				(limit) -> CrossingSearch.meets(sum, (rising ? -limit : limit) * GroundSearch.DAYS / 100.0, rising)));
	}

}
