package org.leafward.register;

/**
 * How fast water leaves a bed, by a hole 30 cm (1 ft) deep that is filled, left to drain
 * and filled again (common practice).
 */
public enum SoilDrainage {

	/** The second filling falls by 2.5 cm (1 in) an hour or more. */
	GOOD("drains well: the water falls by 2.5 cm (1 in) an hour or more"),

	/** Slower than that, but gone by the next day. */
	SLOW("drains slowly: gone by the next day"),

	/** Water still stands the next day. */
	NONE("doesn’t drain: water still stands the next day"),

	/** Nobody looked. */
	UNTESTED("nobody tested it");

	private final String words;

	SoilDrainage(String words) {
		this.words = words;
	}

	public String words() {
		return this.words;
	}

}
