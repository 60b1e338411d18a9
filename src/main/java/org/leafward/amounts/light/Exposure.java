package org.leafward.amounts.light;

/**
 * Where a plant stands while it is outside on a day of its ramp. The shares of the open
 * sky's light are from memory.
 */
public enum Exposure {

	/** The north side of a house or under a dense tree; the south side in the south. */
	DEEP_SHADE("in deep shade, out of the wind", 0.08),

	/** Under a light tree or a net, or with much sky but no sun. */
	BRIGHT_SHADE("in bright shade, out of the wind", 0.2),

	/** In the sun until a time of the clock, then in bright shade. */
	SUN_UNTIL("sun until", 1),

	/** In the sun all the while it is out. */
	SUN("in the sun", 1),

	/** Where it will grow. */
	ITS_PLACE("in the place where it will grow", 1);

	private final String words;

	private final double share;

	Exposure(String words, double share) {
		this.words = words;
		this.share = share;
	}

	public String words() {
		return this.words;
	}

	/** The part of the open sky's light; of the site's own light in its place. */
	double share() {
		return this.share;
	}

}
