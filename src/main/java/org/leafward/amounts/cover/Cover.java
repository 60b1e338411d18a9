package org.leafward.amounts.cover;

import org.leafward.amounts.Degrees;

/**
 * What keeps some frost off. Gains are those of still, clear nights over soil that the
 * sun has warmed; in wind there is next to none.
 */
public enum Cover {

	/** Sheets or blankets, dry. */
	SHEETS("sheets or blankets", 2, 3,
			"Colorado State University Extension in Larimer County, in the Coloradoan, 3 October 2014, read in an excerpt"),

	/** Thin spunbonded cloth. */
	LIGHT_ROW_COVER("light row cover", 2, 4, Cover.GARDENNOTES),

	/** Plastic over hoops, or a bell of glass or plastic, clear of the leaves. */
	TUNNEL_OR_CLOCHE("a tunnel or cloche", 2, 4, Cover.GARDENNOTES),

	/** Thick spunbonded cloth, or two layers of thin. */
	HEAVY_ROW_COVER("heavy or double row cover", 4, 6,
			"from memory; row covers all together 2 to 6 °F in the Coloradoan, as above"),

	/** A box with a lid of glass or plastic. */
	COLD_FRAME("a closed cold frame", 5, 10, "from memory");

	private static final String GARDENNOTES = "Frost Protection and Extending the Growing Season, GardenNotes 722, "
			+ "Colorado State University Extension, read in an excerpt";

	private final String words;

	private final double lowGain;

	private final double highGain;

	private final String source;

	Cover(String words, double lowFahrenheit, double highFahrenheit, String source) {
		this.words = words;
		this.lowGain = Degrees.differenceOfFahrenheit(lowFahrenheit);
		this.highGain = Degrees.differenceOfFahrenheit(highFahrenheit);
		this.source = source;
	}

	public String words() {
		return this.words;
	}

	/**
	 * What can be counted on.
	 * @return degrees Celsius
	 */
	public double lowGain() {
		return this.lowGain;
	}

	/**
	 * What there is at best.
	 * @return degrees Celsius, not below {@link #lowGain}
	 */
	public double highGain() {
		return this.highGain;
	}

	public String source() {
		return this.source;
	}

}
