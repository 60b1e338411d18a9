package org.leafward.care.core.rule;

/**
 * Bounds on the age of a planting, counted in seasons; 0 is the season of planting.
 *
 * @param from lowest number of years that counts, 0 or more
 * @param below first number of years that no longer counts, above {@code from}
 */
public record YearsSincePlanting(int from, int below) {

	/** At any age, but not before the season of planting. */
	public static final YearsSincePlanting ANY = new YearsSincePlanting(0, Integer.MAX_VALUE);

	public YearsSincePlanting {
		if (from < 0 || below <= from) {
			throw new IllegalArgumentException("years from %d to below %d contain none".formatted(from, below));
		}
	}

	public boolean contains(int years) {
		return years >= this.from && years < this.below;
	}

}
