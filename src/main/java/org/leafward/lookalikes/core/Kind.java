package org.leafward.lookalikes.core;

/** What sort of thing a cause is. */
public enum Kind {

	/** Weather and light. */
	WEATHER("weather-and-light", "weather or light"),

	/** A living thing that passes from plant to plant. */
	DISEASE("disease", "disease"),

	/** Insects and mites. */
	PEST("pest", "insects or mites"),

	/** Salts and sprays. */
	CHEMICAL("chemical", "salts or sprays"),

	/** A lack of a mineral. */
	NUTRIENT("nutrient", "a lack of a mineral"),

	/** Soil, roots and building works. */
	SITE("site", "soil and roots"),

	/** No injury at all. */
	NORMAL("normal", "no injury");

	private final String code;

	private final String words;

	Kind(String code, String words) {
		this.code = code;
		this.words = words;
	}

	/**
	 * The word used in config/lookalikes.
	 * @return lower case with hyphens
	 */
	public String code() {
		return this.code;
	}

	public String words() {
		return this.words;
	}

}
