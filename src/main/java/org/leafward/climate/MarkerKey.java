package org.leafward.climate;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;

/**
 * Which season marker is meant, at which probability.
 * <p>
 * The probability is the chance of cold on the wrong side of the date: in spring, that
 * the event comes on or after it, so 10 % is the late, safe date; in fall, that the event
 * comes on or before it, so 10 % is the early date. Sums of degree-days count as spring.
 *
 * @param kind what happens
 * @param threshold the temperature, for the kinds that need one; the base of degree-days
 * @param probability percent, 1 to 99
 * @param goal the sum, for degree-days only
 * @param daylight the length of the day, for daylight only
 */
public record MarkerKey(MarkerKind kind, @Nullable TemperatureThreshold threshold, int probability,
		@Nullable HeatGoal goal, @Nullable DayLength daylight) {

	private static final int MEDIAN = 50;

	public MarkerKey {
		if (kind.needsThreshold() != (threshold != null)) {
			throw new BadInput(
					"marker %s %s".formatted(kind.code(),
							kind.needsThreshold() ? "needs a threshold" : "takes no threshold"),
					"threshold", kind.needsThreshold() ? "add one, for example 32F" : "remove it");
		}
		if (kind.needsGoal() != (goal != null)) {
			throw new BadInput("marker %s %s".formatted(kind.code(), kind.needsGoal() ? "needs a sum" : "takes no sum"),
					"sum", kind.needsGoal() ? "add one, for example 200" : "remove it");
		}
		if (kind.needsDaylight() != (daylight != null)) {
			throw new BadInput(
					"marker %s %s".formatted(kind.code(),
							kind.needsDaylight() ? "needs a length of the day" : "takes no length of the day"),
					"daylight", kind.needsDaylight() ? "add one, for example 14h" : "remove it");
		}
		if (kind.needsDaylight() && probability != MEDIAN) {
			throw new BadInput("marker %s takes no probability".formatted(kind.code()), "probability",
					"remove it: the sun keeps to the calendar");
		}
		if (probability < 1 || probability > 99) {
			throw new BadInput("probability %d is outside 1 to 99 percent".formatted(probability), "probability",
					"use 50 for the median, 10 for the cautious date");
		}
	}

	/**
	 * A marker of a kind that is no sum of heat.
	 * @param kind what happens
	 * @param threshold the temperature, for the kinds that need one
	 * @param probability percent, 1 to 99
	 */
	public MarkerKey(MarkerKind kind, @Nullable TemperatureThreshold threshold, int probability) {
		this(kind, threshold, probability, null, null);
	}

	/**
	 * A marker that may be a sum of heat.
	 * @param kind what happens
	 * @param threshold the temperature, for the kinds that need one
	 * @param probability percent, 1 to 99
	 * @param goal the sum, for degree-days only
	 */
	public MarkerKey(MarkerKind kind, @Nullable TemperatureThreshold threshold, int probability,
			@Nullable HeatGoal goal) {
		this(kind, threshold, probability, goal, null);
	}

	/**
	 * A length of the day.
	 * @param kind longer or shorter
	 * @param daylight how long
	 * @return the key
	 */
	public static MarkerKey of(MarkerKind kind, DayLength daylight) {
		return new MarkerKey(kind, null, MEDIAN, null, daylight);
	}

	/**
	 * A name that is unique among markers.
	 * @return for example {@code last-spring-freeze 32F p10},
	 * {@code degree-days 50F 200 p50} or {@code daylight-lengthens-to 14h}
	 */
	public String code() {
		return this.kind.code() + ((this.threshold != null) ? " " + this.threshold.code() : "")
				+ ((this.goal != null) ? " " + this.goal.code() : "")
				+ ((this.daylight != null) ? " " + this.daylight.code() : " p" + this.probability);
	}

}
