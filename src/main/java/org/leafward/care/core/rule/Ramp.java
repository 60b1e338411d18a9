package org.leafward.care.core.rule;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Care that changes step by step over consecutive days, such as hardening off. Each day
 * is a task of its own.
 *
 * @param anchor the day it hangs on
 * @param endsAtAnchor true when the anchor is the last day, false when it is the first
 * @param steps the steps in order, at least one
 * @param light what its steps are worked out from for each planting; null when they are
 * the same for all
 */
public record Ramp(Anchor anchor, boolean endsAtAnchor, List<RampStep> steps,
		@Nullable RampLight light) implements Timing {

	/**
	 * A ramp whose steps are the same for all plantings.
	 * @param anchor the day it hangs on
	 * @param endsAtAnchor true when the anchor is the last day, false when it is the
	 * first
	 * @param steps the steps in order, at least one
	 */
	public Ramp(Anchor anchor, boolean endsAtAnchor, List<RampStep> steps) {
		this(anchor, endsAtAnchor, steps, null);
	}

	public Ramp {
		steps = List.copyOf(steps);
		if (steps.isEmpty()) {
			throw new IllegalArgumentException("a ramp needs a step");
		}
	}

	/**
	 * Length of the whole ramp.
	 * @return days, 1 or more
	 */
	public int days() {
		return this.steps.stream().mapToInt(RampStep::days).sum();
	}

	/**
	 * The step that a day belongs to.
	 * @param day day of the ramp, 1 to {@link #days()}
	 * @return the step
	 */
	public RampStep stepOn(int day) {
		int left = day;
		for (RampStep step : this.steps) {
			left -= step.days();
			if (left <= 0 && day >= 1) {
				return step;
			}
		}
		throw new IllegalArgumentException("day %d is outside 1 to %d".formatted(day, days()));
	}

	@Override
	public boolean oncePerPlanting() {
		return this.anchor instanceof PlantingDateAnchor;
	}

}
