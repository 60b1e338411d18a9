package org.leafward.amounts.salt;

/**
 * What is spread on ice. Sentences are common practice, from memory, unless
 * {@link #source} says more.
 */
public enum DeIcer {

	/** Rock salt. */
	SODIUM_CHLORIDE("rock salt (sodium chloride)", true,
			"Hardest on plants: chloride scorches leaves, sodium seals the soil. It loses its effect below about −7 to "
					+ "−9 °C (15 to 20 °F). For walks beside plants take something else.",
			"limit of cold from memory; that calcium chloride is safer: University of Illinois Extension, Deicing salt "
					+ "and plants, 2025, read"),

	/** Calcium chloride. */
	CALCIUM_CHLORIDE("calcium chloride", false,
			"Easier on the soil than rock salt and works in deep cold, but its chloride scorches too; use little.",
			"University of Illinois Extension, Deicing salt and plants, 2025, read; the rest from memory"),

	/** Magnesium chloride. */
	MAGNESIUM_CHLORIDE("magnesium chloride", false,
			"Much like calcium chloride; its chloride scorches too, so use little.", "common practice, from memory"),

	/** Potassium chloride. */
	POTASSIUM_CHLORIDE("potassium chloride", false,
			"A fertiliser salt: it burns roots and leaves when it gathers, and works in mild frost only.",
			"common practice, from memory"),

	/** Urea. */
	UREA("urea", false,
			"A nitrogen fertiliser: no chloride, but too much burns, and it feeds waters that it washes "
					+ "into. Mild frost only.",
			"common practice, from memory"),

	/** Calcium magnesium acetate. */
	CALCIUM_MAGNESIUM_ACETATE("calcium magnesium acetate (CMA)", false,
			"Gentlest of the melting ones: neither sodium nor chloride. Dear, and slow in hard frost; it takes air "
					+ "from water as it rots.",
			"common practice, from memory"),

	/** Sand or grit. */
	SAND("sand or grit", false,
			"Melts nothing and gives grip. Sweep it up in spring, so that it doesn’t clog drains and beds.",
			"common practice, from memory"),

	/** Nobody knows. */
	UNKNOWN("I don’t know", true,
			"Counted as rock salt, the most common. Ask who salts; the bag names the salt. Names such as “pet-safe” "
					+ "don’t say what is in it.",
			"our choice");

	private final String words;

	private final boolean sodium;

	private final String said;

	private final String source;

	DeIcer(String words, boolean sodium, String said, String source) {
		this.words = words;
		this.sodium = sodium;
		this.said = said;
		this.source = source;
	}

	public String words() {
		return this.words;
	}

	/**
	 * Whether it brings sodium, so that the soil should be tested for it.
	 * @return true when unknown, too
	 */
	public boolean sodium() {
		return this.sodium;
	}

	/**
	 * What is said about it.
	 * @return sentences
	 */
	public String said() {
		return this.said;
	}

	public String source() {
		return this.source;
	}

}
