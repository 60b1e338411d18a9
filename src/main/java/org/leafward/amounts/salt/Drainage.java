package org.leafward.amounts.salt;

import org.leafward.climate.core.water.TextureClass;

/**
 * How fast water leaves a soil, by a hole 30 cm (1 ft) deep that is filled, left to drain
 * and filled again. The limits are common practice, from memory; what is put on at once
 * follows Purdue's "2 to 3 applications" for 6 inches where it drains well, and is our
 * choice where it doesn't.
 */
public enum Drainage {

	/** The second filling falls by 2.5 cm an hour or more. */
	GOOD("drains well: a filled hole falls by 2.5 cm (1 in) an hour or more", 75),

	/** Slower than that, but gone by the next day. */
	SLOW("drains slowly: gone by the next day", 25),

	/** Water still stands the next day. */
	NONE("doesn’t drain: water stands in the hole the next day", 0),

	/** Nobody looked. */
	UNTESTED("nobody tested it", 75);

	/** How to find out. */
	public static final String CHECK = "Dig a hole 30 cm (1 ft) deep, fill it, let it drain and fill it again: "
			+ "water that still stands the next day means that leaching won’t work there.";

	private final String words;

	private final double mostMillimetres;

	Drainage(String words, double mostMillimetres) {
		this.words = words;
		this.mostMillimetres = mostMillimetres;
	}

	/**
	 * What to count on where nobody tested.
	 * @param soil texture
	 * @return slow for clays, else untested
	 */
	public static Drainage presumed(TextureClass soil) {
		return switch (soil) {
			case SILTY_CLAY, CLAY -> SLOW;
			default -> UNTESTED;
		};
	}

	public String words() {
		return this.words;
	}

	/**
	 * Water to put on at once.
	 * @return mm, 0 where nothing drains
	 */
	public double mostMillimetres() {
		return this.mostMillimetres;
	}

}
