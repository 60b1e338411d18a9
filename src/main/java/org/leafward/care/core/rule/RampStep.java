package org.leafward.care.core.rule;

import org.jspecify.annotations.Nullable;

/**
 * A stretch of a ramp with the same instruction each day.
 *
 * @param days how many days it lasts, 1 to 60
 * @param place where the plant stands, for example "bright shade out of the wind"
 * @param hours hours a day in that place, 0 to 24; null when the step is not about time
 * @param text what to do, a sentence or two
 */
public record RampStep(int days, String place, @Nullable Double hours, String text) {

	public RampStep {
		if (days < 1 || days > 60) {
			throw new IllegalArgumentException("a step of %d days is outside 1 to 60".formatted(days));
		}
	}

}
