package org.leafward.climate.core.drought;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/**
 * The classes of drought that are in use in the United States, by the ranges of the
 * Standardized Precipitation Index that the national classification publishes
 * (droughtmonitor.unl.edu, "Drought Classification", read in a copy): D0 -0.5 to -0.7, D1
 * -0.8 to -1.2, D2 -1.3 to -1.5, D3 -1.6 to -1.9, D4 -2.0 or less. The weekly map weighs
 * many more indicators and the judgement of its authors.
 */
public enum DroughtClass {

	/** Abnormally dry, which is not yet drought. */
	D0("abnormally dry", -5),

	/** Moderate drought. */
	D1("moderate drought", -8),

	/** Severe drought. */
	D2("severe drought", -13),

	/** Extreme drought. */
	D3("extreme drought", -16),

	/** Exceptional drought. */
	D4("exceptional drought", -20);

	private final String words;

	private final int tenths;

	DroughtClass(String words, int tenths) {
		this.words = words;
		this.tenths = tenths;
	}

	public String words() {
		return this.words;
	}

	/**
	 * The class of an index. The published ranges are in tenths, so it is rounded to them
	 * first.
	 * @param index standardized precipitation index
	 * @return empty when it isn't dry
	 */
	public static Optional<DroughtClass> of(double index) {
		long tenths = Math.round(index * 10);
		return Arrays.stream(values()).filter((one) -> tenths <= one.tenths).max(Comparator.naturalOrder());
	}

}
