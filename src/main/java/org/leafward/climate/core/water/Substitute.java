package org.leafward.climate.core.water;

/** What stood in for a value that was not measured, as FAO-56 (chapter 3) advises. */
public enum Substitute {

	/** The dew point is taken as the minimum temperature (equation 48). */
	DEW_POINT_FROM_MINIMUM("dew point taken as the day's minimum (FAO-56, equation 48)"),

	/** The radiation is estimated from the range of temperature (equation 50). */
	RADIATION_FROM_TEMPERATURES("radiation estimated from the range of temperature (FAO-56, equation 50)"),

	/** The wind is taken as 2 m/s at 2 m. */
	WIND_TWO_METRES_PER_SECOND("wind taken as 2 m/s (FAO-56, chapter 3)");

	private final String words;

	Substitute(String words) {
		this.words = words;
	}

	/**
	 * What was done, for explanations.
	 * @return a few words
	 */
	public String words() {
		return this.words;
	}

}
