package org.leafward.care.core.rule;

/**
 * A window between two anchors.
 *
 * @param from first day
 * @param to last day; when it comes out before the first day there is no window that
 * season
 * @param everyDays 0 for a single window, else the length of the repeats in days, 1 to
 * 366: the window is cut into consecutive windows of this length, the last may be shorter
 * @param shortestDays a whole window of fewer days is dropped, 1 or more
 */
public record Span(Anchor from, Anchor to, int everyDays, int shortestDays) implements Timing {

	public Span {
		if (everyDays < 0 || everyDays > 366 || shortestDays < 1 || shortestDays > 366) {
			throw new IllegalArgumentException("every %d days, shortest %d days: outside 0 to 366 and 1 to 366"
				.formatted(everyDays, shortestDays));
		}
	}

	public boolean repeats() {
		return this.everyDays > 0;
	}

	@Override
	public boolean oncePerPlanting() {
		return this.from instanceof PlantingDateAnchor || this.to instanceof PlantingDateAnchor;
	}

}
