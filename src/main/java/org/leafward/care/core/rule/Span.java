package org.leafward.care.core.rule;

import java.time.LocalDate;
import org.leafward.measure.DayWindow;

/**
 * A window between two anchors.
 *
 * @param from first day
 * @param to last day; when it comes out before the first day there is no window that
 * season
 * @param everyDays 0 for a single window, else the length of the repeats in days, 1 to
 * 366: the window is cut into consecutive windows of this length; what is left at the end
 * is a shorter one, or joins the last when it is less than half
 * @param shortestDays a whole window of fewer days is dropped, 1 or more
 * @param untilPlanted whether the window is about planting, and so dropped when the
 * planting date lies before its first day
 */
public record Span(Anchor from, Anchor to, int everyDays, int shortestDays, boolean untilPlanted) implements Timing {

	public Span {
		if (everyDays < 0 || everyDays > 366 || shortestDays < 1 || shortestDays > 366) {
			throw new IllegalArgumentException("every %d days, shortest %d days: outside 0 to 366 and 1 to 366"
				.formatted(everyDays, shortestDays));
		}
	}

	/**
	 * A window that is not about planting.
	 * @param from first day
	 * @param to last day
	 * @param everyDays 0 for a single window, else the length of the repeats
	 * @param shortestDays a whole window of fewer days is dropped
	 */
	public Span(Anchor from, Anchor to, int everyDays, int shortestDays) {
		this(from, to, everyDays, shortestDays, false);
	}

	public boolean repeats() {
		return this.everyDays > 0;
	}

	/**
	 * Whether a dated window is kept.
	 * @param window the whole window, before it is cut into repeats
	 * @param plantedOn the planting date
	 * @return false when it is too short, or about planting what already stands
	 */
	public boolean keeps(DayWindow window, LocalDate plantedOn) {
		return window.days() >= this.shortestDays && !(this.untilPlanted && plantedOn.isBefore(window.from()));
	}

	@Override
	public boolean oncePerPlanting() {
		return this.from instanceof PlantingDateAnchor || this.to instanceof PlantingDateAnchor;
	}

}
