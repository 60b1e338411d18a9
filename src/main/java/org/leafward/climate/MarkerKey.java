package org.leafward.climate;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;

/**
 * Which season marker is meant, at which probability.
 * <p>
 * The probability is the chance of cold on the wrong side of the date: in spring, that
 * the event comes on or after it, so 10 % is the late, safe date; in fall, that the event
 * comes on or before it, so 10 % is the early date.
 *
 * @param kind what happens
 * @param threshold the temperature, for the kinds that need one
 * @param probability percent, 1 to 99
 */
public record MarkerKey(MarkerKind kind, @Nullable TemperatureThreshold threshold, int probability) {

	public MarkerKey {
		if (kind.needsThreshold() != (threshold != null)) {
			throw new BadInput(
					"marker %s %s".formatted(kind.code(),
							kind.needsThreshold() ? "needs a threshold" : "takes no threshold"),
					"threshold", kind.needsThreshold() ? "add one, for example 32F" : "remove it");
		}
		if (probability < 1 || probability > 99) {
			throw new BadInput("probability %d is outside 1 to 99 percent".formatted(probability), "probability",
					"use 50 for the median, 10 for the cautious date");
		}
	}

	/**
	 * A name that is unique among markers.
	 * @return for example {@code last-spring-freeze 32F p10}
	 */
	public String code() {
		return this.kind.code() + ((this.threshold != null) ? " " + this.threshold.code() : "") + " p"
				+ this.probability;
	}

}
