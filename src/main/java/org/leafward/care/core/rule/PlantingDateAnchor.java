package org.leafward.care.core.rule;

/**
 * The day the planting was or will be planted (for seedlings: set out). A window that
 * hangs on it exists once, in the season of planting.
 *
 * @param days days after it; negative is before
 */
public record PlantingDateAnchor(int days) implements Anchor {

	@Override
	public String words() {
		return Offsets.words(this.days, "the planting date");
	}

}
