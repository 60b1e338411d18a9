package org.leafward.lookalikes.core;

/**
 * How sure a finding is, in words. None of them says certain. The bounds are shares of
 * the causes that the key knows; how often each word is right is counted in
 * {@code DifferentialCalibrationTests}.
 */
public enum Sureness {

	/** Three quarters and more. */
	LIKELY(0.75, "likely"),

	/** From 45 to 75 %. */
	MORE_LIKELY_THAN_OTHERS(0.45, "more likely than the others"),

	/** From 20 to 45 %. */
	POSSIBLE(0.2, "possible"),

	/** From 5 to 20 %. */
	LESS_LIKELY(0.05, "less likely"),

	/** Below 5 %. */
	UNLIKELY(0, "unlikely");

	private final double least;

	private final String words;

	Sureness(double least, String words) {
		this.least = least;
		this.words = words;
	}

	/**
	 * The word for a share.
	 * @param share 0 to 1
	 * @return never null
	 */
	public static Sureness of(double share) {
		for (Sureness one : values()) {
			if (share >= one.least) {
				return one;
			}
		}
		return UNLIKELY;
	}

	/**
	 * The lower bound of its shares.
	 * @return 0 to 1
	 */
	public double least() {
		return this.least;
	}

	public String words() {
		return this.words;
	}

}
