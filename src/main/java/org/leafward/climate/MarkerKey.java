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
 */
public record MarkerKey(MarkerKind kind, @Nullable TemperatureThreshold threshold, int probability,
		@Nullable HeatGoal goal) {

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
		this(kind, threshold, probability, null);
	}

	/**
	 * A name that is unique among markers.
	 * @return for example {@code last-spring-freeze 32F p10} or
	 * {@code degree-days 50F 200 p50}
	 */
	public String code() {
		return this.kind.code() + ((this.threshold != null) ? " " + this.threshold.code() : "")
				+ ((this.goal != null) ? " " + this.goal.code() : "") + " p" + this.probability;
	}

}
