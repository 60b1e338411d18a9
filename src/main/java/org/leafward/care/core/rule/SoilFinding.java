package org.leafward.care.core.rule;

import java.util.Locale;
import org.leafward.amounts.soiltest.Remedy;
import org.leafward.amounts.soiltest.SoilTreatment;

/** What a kept soil test may ask for, as rules hang on it. */
public enum SoilFinding {

	/** Gypsum, as there is too much sodium. */
	GYPSUM("gypsum"),

	/** Water after the gypsum, as there is other salt as well. */
	LEACH_AFTER_GYPSUM("gypsum and then leaching"),

	/** Water alone. */
	LEACH("leaching without gypsum"),

	/** Lime, as the soil is acid. */
	LIME("lime in place of gypsum"),

	/** Drainage before anything else. */
	DRAIN_FIRST("drainage before anything else"),

	/** The exchange capacity is missing. */
	MEASURE_EXCHANGE("the exchange capacity");

	private final String words;

	SoilFinding(String words) {
		this.words = words;
	}

	/**
	 * What is asked for.
	 * @return after "a soil test that asks for"
	 */
	public String words() {
		return this.words;
	}

	/**
	 * The name used in rule packs.
	 * @return lower case with hyphens
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	/**
	 * Whether a test asks for this.
	 * @param treatment what answers the test
	 * @return never true where the soil is normal
	 */
	public boolean isAskedBy(SoilTreatment treatment) {
		return switch (this) {
			case GYPSUM -> treatment.remedy() == Remedy.GYPSUM;
			case LEACH_AFTER_GYPSUM -> treatment.remedy() == Remedy.GYPSUM && treatment.leaching() != null;
			case LEACH -> treatment.remedy() == Remedy.LEACH;
			case LIME -> treatment.remedy() == Remedy.LIME;
			case DRAIN_FIRST -> treatment.remedy() == Remedy.DRAIN_FIRST;
			case MEASURE_EXCHANGE -> treatment.remedy() == Remedy.MEASURE_EXCHANGE;
		};
	}

}
