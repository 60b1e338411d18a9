package org.leafward.care.core.rule;

/**
 * Single days between two anchors on which the weather calls for the care, as far as the
 * forecast reaches.
 *
 * @param from first day that counts
 * @param to last day that counts
 * @param daysAhead how many days before that day the task stands, 0 to 3
 */
public record DayByDay(Anchor from, Anchor to, int daysAhead) implements Timing {

	public DayByDay {
		if (daysAhead < 0 || daysAhead > 3) {
			throw new IllegalArgumentException("%d days ahead are outside 0 to 3".formatted(daysAhead));
		}
	}

	@Override
	public boolean oncePerPlanting() {
		return this.from instanceof PlantingDateAnchor || this.to instanceof PlantingDateAnchor;
	}

}
