package org.leafward.care.core.check;

import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.measure.SeasonDay;

/**
 * A climate on which rules are compared. Freeze dates at 32 °F and seasonal means are
 * published normals of NCEI (shared/climate/reference-climates.csv); other dates follow
 * from them by these assumptions: daily normals run on one cosine wave; a freeze at
 * another threshold comes where the wave of the minima has moved by as many degrees; soil
 * at 4 inches has the mean temperature of the air ten days before; every event is spread
 * as the freezes of its half of the year are. Good to a week or two, enough to tell
 * whether windows overlap, never for a gardener's date.
 *
 * @param name what the place is called
 * @param lastFreeze middle date of the last spring freeze at 32 °F, day of the year
 * @param springSpread days from it to the date of 90 %
 * @param firstFreeze middle date of the first fall freeze at 32 °F, day of the year
 * @param fallSpread days from it to the date of 90 %
 * @param low daily minima
 * @param high daily maxima
 */
record ReferenceClimate(String name, int lastFreeze, int springSpread, int firstFreeze, int fallSpread, YearCurve low,
		YearCurve high) {

	/** A cold, a cool and a mild place. */
	static final List<ReferenceClimate> ALL = List.of(
			new ReferenceClimate("Lebanon NH", 129, 12, 279, 13, YearCurve.of(12.8, 32.1, 55.4, 37.9),
					YearCurve.of(33.2, 56.4, 80.6, 59.8)),
			new ReferenceClimate("Westchester NY", 100, 10, 305, 15, YearCurve.of(25.5, 40.7, 63.3, 47.0),
					YearCurve.of(40.3, 59.0, 81.2, 63.8)),
			new ReferenceClimate("Central Park NY", 91, 14, 322, 15, YearCurve.of(30.4, 45.4, 67.8, 51.9),
					YearCurve.of(42.0, 61.0, 82.7, 64.9)));

	private static final double FREEZING = 32;

	private static final int SOIL_DELAY = 10;

	/** A quarter of the delay at 4 inches, as in the model of the soil. */
	private static final int UPPER_SOIL_DELAY = 3;

	/** Days between the last icy road and the last freeze; an assumption of ours. */
	private static final int ICE_BEFORE_LAST_FREEZE = 21;

	private static final int YEAR = 365;

	/** The standard normal quantile of 90 %. */
	private static final double NINETY = 1.2816;

	/**
	 * The date of an event.
	 * @param key which event, at which probability
	 * @return day of the season, 1 for 1 January; empty where the event doesn't happen
	 */
	OptionalInt date(MarkerKey key) {
		OptionalInt middle = middle(key);
		if (middle.isEmpty()) {
			return middle;
		}
		double deviate = normalQuantile(key.probability() / 100.0) / NINETY;
		double shift = key.kind().spring() ? -deviate * this.springSpread : deviate * this.fallSpread;
		return OptionalInt.of(middle.getAsInt() + (int) Math.round(shift));
	}

	private OptionalInt middle(MarkerKey key) {
		TemperatureThreshold threshold = key.threshold();
		double degrees = (threshold != null) ? threshold.celsius() * 9 / 5 + FREEZING : FREEZING;
		YearCurve air = YearCurve.between(this.low, this.high);
		return switch (key.kind()) {
			case LAST_SPRING_FREEZE -> this.low.warmsTo(this.low.on(this.lastFreeze) + (degrees - FREEZING), 0);
			case FIRST_FALL_FREEZE -> this.low.coolsTo(this.low.on(this.firstFreeze) + (degrees - FREEZING), 0);
			case NIGHTS_WARM_TO -> this.low.warmsTo(degrees, 0);
			case NIGHTS_COOL_TO -> this.low.coolsTo(degrees, 0);
			case DAYS_COOL_TO -> this.high.coolsTo(degrees, 0);
			case GROUND_THAW, SOIL_WARMS_TO -> air.warmsTo(degrees, SOIL_DELAY);
			case GROUND_FREEZE, SOIL_COOLS_TO -> air.coolsTo(degrees, SOIL_DELAY);
			case UPPER_SOIL_WARMS_TO -> air.warmsTo(degrees, UPPER_SOIL_DELAY);
			case UPPER_SOIL_COOLS_TO -> air.coolsTo(degrees, UPPER_SOIL_DELAY);
			case DE_ICING_END -> OptionalInt.of(this.lastFreeze - ICE_BEFORE_LAST_FREEZE);
			case DEGREE_DAYS -> heat(key.goal(), threshold, air);
			case DAYLIGHT_LENGTHENS_TO, DAYLIGHT_SHORTENS_TO -> OptionalInt.empty();
		};
	}

	private static OptionalInt heat(@Nullable HeatGoal goal, @Nullable TemperatureThreshold base, YearCurve air) {
		if (goal == null || base == null) {
			return OptionalInt.empty();
		}
		double floor = base.celsius() * 9 / 5 + FREEZING;
		double wanted = base.fahrenheit() ? goal.sum() : goal.sum() * 9 / 5.0;
		int first = SeasonDay.of(goal.startIn(new Season(2001, Hemisphere.NORTH)), 2001);
		double sum = 0;
		for (int day = first; day <= YEAR; day++) {
			sum += Math.max(0, air.on(day) - floor);
			if (sum >= wanted) {
				return OptionalInt.of(day);
			}
		}
		return OptionalInt.empty();
	}

	/** By Tukey's lambda distribution, within 0.01 from 1 % to 99 % (from memory). */
	private static double normalQuantile(double share) {
		return (Math.pow(share, 0.135) - Math.pow(1 - share, 0.135)) / 0.1975;
	}

}
