package org.leafward.care.core.rule;

/**
 * The day the planting was or will be planted (for seedlings: set out). A window that
 * hangs on it exists once, in the season of planting.
 *
 * @param days days after it
 */
public record PlantingDateAnchor(Days days) implements Anchor {

	/**
	 * The same number of days for all plants.
	 * @param days days after it; negative is before
	 */
	public PlantingDateAnchor(int days) {
		this(Days.of(days));
	}

	@Override
	public String words() {
		return this.days.words("the planting date");
	}

	@Override
	public String movable() {
		return "planting date";
	}

}
