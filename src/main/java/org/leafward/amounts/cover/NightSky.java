package org.leafward.amounts.cover;

/**
 * What the night is like. On a clear, calm night plants are 2 to 3 °C (3 to 5 °F) colder
 * than a thermometer in its shelter at head height: National Weather Service Blacksburg,
 * Frost/Freeze Program, read. The colder end is taken.
 */
public enum NightSky {

	/** Clear and calm. */
	CLEAR_AND_CALM("clear and calm", 3),

	/** Clouds or wind keep the air mixed or the ground from cooling. */
	CLOUDY_OR_WINDY("cloudy or windy", 0),

	/** Not known, so taken as clear and calm. */
	UNKNOWN("unknown, so taken as clear and calm", 3);

	/** Where the difference comes from. */
	static final String SOURCE = "Frost/Freeze Program, National Weather Service Blacksburg, read in an excerpt: 3 to 5 °F";

	private final String words;

	private final double colder;

	NightSky(String words, double colder) {
		this.words = words;
		this.colder = colder;
	}

	public String words() {
		return this.words;
	}

	/**
	 * How much colder plants are than the forecast says for the place.
	 * @return degrees Celsius, 0 or more
	 */
	public double colder() {
		return this.colder;
	}

}
