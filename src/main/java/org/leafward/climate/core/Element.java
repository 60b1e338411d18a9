package org.leafward.climate.core;

/**
 * The daily elements that are kept, named and counted as in GHCN-Daily.
 * <p>
 * The bounds only catch damaged values; they lie a little outside the extremes ever
 * measured (from memory: -89.2 and 56.7 °C, 1825 mm of rain in a day, 11.8 m of snow).
 */
public enum Element {

	/** Daily minimum temperature, tenths of °C. */
	TMIN(-950, 600),

	/** Daily maximum temperature, tenths of °C. */
	TMAX(-950, 600),

	/** Precipitation, tenths of mm. */
	PRCP(0, 20_000),

	/** Depth of snow on the ground, mm. */
	SNWD(0, 15_000),

	/** Mean wind speed of the day, tenths of m/s. */
	AWND(0, 1_000);

	private final int lowest;

	private final int highest;

	Element(int lowest, int highest) {
		this.lowest = lowest;
		this.highest = highest;
	}

	public int lowest() {
		return this.lowest;
	}

	public int highest() {
		return this.highest;
	}

	/**
	 * Whether a value can be true.
	 * @param value in the element's own unit
	 * @return false outside the bounds, which are both allowed themselves
	 */
	public boolean plausible(int value) {
		return value >= this.lowest && value <= this.highest;
	}

}
