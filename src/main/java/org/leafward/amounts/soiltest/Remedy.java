package org.leafward.amounts.soiltest;

import org.leafward.amounts.salt.Drainage;

/** What answers a soil test. */
public enum Remedy {

	/** Nothing is wrong with salt or sodium. */
	NONE("leave it", "Gypsum does nothing here: there is no sodium to drive out."),

	/** Water alone. */
	LEACH("leach", "Gypsum does nothing here but add salt: there is little sodium. Leach with clear water instead."),

	/** Gypsum, then water. */
	GYPSUM("gypsum, then water", "Gypsum helps here."),

	/** Lime, as the soil is acid. */
	LIME("lime",
			"Gypsum is the wrong thing here: the soil is acid. Lime, in the amount that a laboratory gives, brings the "
					+ "same calcium and lifts the pH, which gypsum doesn’t."),

	/** Drainage before anything else. */
	DRAIN_FIRST("drain it first",
			"Gypsum does nothing here as long as water can’t drain: sodium and salt have nowhere to go. Mend the "
					+ "drainage, raise the bed or change the soil first."),

	/** The exchange capacity is missing. */
	MEASURE_EXCHANGE("measure the CEC",
			"Gypsum helps here, but how much hangs on the exchange capacity: have the laboratory measure the "
					+ "CEC.");

	/**
	 * pH below which lime goes before gypsum; Handbook 60 has lime dissolve in acid soil
	 * (from memory), the limit is our choice.
	 */
	public static final double LIME_BELOW = 6;

	/** Where the choice comes from. */
	static final String SOURCE = "no value without a sodium problem: Purdue Landscape Report, Salt in the landscape, "
			+ "read; lime in acid soil: USDA Agriculture Handbook 60, from memory, below pH 6 our choice; drainage first: "
			+ "common practice";

	private final String label;

	private final String words;

	Remedy(String label, String words) {
		this.label = label;
		this.words = words;
	}

	/**
	 * The remedy in a word or two.
	 * @return for example "leach"
	 */
	public String label() {
		return this.label;
	}

	/**
	 * The remedy for a soil.
	 * @param test its test
	 * @param drainage how water leaves it
	 * @return the remedy
	 */
	public static Remedy of(SoilTest test, Drainage drainage) {
		SoilClass soil = test.soilClass();
		if (soil == SoilClass.NORMAL) {
			return NONE;
		}
		if (drainage == Drainage.NONE) {
			return DRAIN_FIRST;
		}
		if (!soil.sodic()) {
			return LEACH;
		}
		if (test.acidity() < LIME_BELOW) {
			return LIME;
		}
		return (test.exchange() != null) ? GYPSUM : MEASURE_EXCHANGE;
	}

	/**
	 * What it means.
	 * @return sentences
	 */
	public String words() {
		return this.words;
	}

}
