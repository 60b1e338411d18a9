package org.leafward.amounts.soiltest;

import org.leafward.amounts.salt.Drainage;

/** What answers a soil test. */
public enum Remedy {

	/** Nothing is wrong with salt or sodium. */
	NONE("Gypsum does nothing here: there is no sodium to drive out."),

	/** Water alone. */
	LEACH("Gypsum does nothing here but add salt: there is little sodium. Leach with clear water instead."),

	/** Gypsum, then water. */
	GYPSUM("Gypsum helps here."),

	/** Lime, as the soil is acid. */
	LIME("Gypsum is the wrong thing here: the soil is acid. Lime, in the amount that a laboratory gives, brings the "
			+ "same calcium and lifts the pH, which gypsum doesn’t."),

	/** Drainage before anything else. */
	DRAIN_FIRST("Gypsum does nothing here as long as water can’t drain: sodium and salt have nowhere to go. Mend the "
			+ "drainage, raise the bed or change the soil first."),

	/** The exchange capacity is missing. */
	MEASURE_EXCHANGE("Gypsum helps here, but how much hangs on the exchange capacity: have the laboratory measure the "
			+ "CEC.");

	/**
	 * pH below which lime goes before gypsum; Handbook 60 has lime dissolve in acid soil
	 * (from memory), the limit is our choice.
	 */
	public static final double LIME_BELOW = 6;

	private final String words;

	Remedy(String words) {
		this.words = words;
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
