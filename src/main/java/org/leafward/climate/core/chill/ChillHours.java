package org.leafward.climate.core.chill;

/**
 * Hours that count as chill by temperature alone (Weinberger 1950, from memory; in use
 * with the University of California in both forms). Definitions differ at their bounds;
 * here both bounds count.
 */
public enum ChillHours {

	/** At or below 45 °F. */
	UP_TO_45F(Double.NEGATIVE_INFINITY, 45),

	/** From 32 to 45 °F. */
	FROM_32_TO_45F(32, 45);

	/** Takes the noise of the conversion from °C off, °F. */
	private static final double TINY = 1e-9;

	private final double lowest;

	private final double highest;

	ChillHours(double lowest, double highest) {
		this.lowest = lowest;
		this.highest = highest;
	}

	/**
	 * Whether an hour counts.
	 * @param celsius its temperature, °C
	 * @return true when it does; false for NaN
	 */
	public boolean counts(double celsius) {
		double fahrenheit = celsius * 1.8 + 32;
		return fahrenheit >= this.lowest - TINY && fahrenheit <= this.highest + TINY;
	}

}
