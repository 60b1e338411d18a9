package org.leafward.climate;

/** The local events that a rule can hang on. */
public enum MarkerKind {

	/** Last day in spring with a minimum at or below the threshold. */
	LAST_SPRING_FREEZE("last-spring-freeze", true),

	/** First day in fall with a minimum at or below the threshold. */
	FIRST_FALL_FREEZE("first-fall-freeze", true),

	/** First day on which the five-night mean minimum is at or above the threshold. */
	NIGHTS_WARM_TO("nights-warm-to", true),

	/**
	 * First day after midsummer on which the five-night mean minimum is at or below the
	 * threshold.
	 */
	NIGHTS_COOL_TO("nights-cool-to", true),

	/** The ground at 4 inches has been frozen for five days. */
	GROUND_FREEZE("ground-freeze", false),

	/** The ground at 4 inches has been thawed for five days, after winter. */
	GROUND_THAW("ground-thaw", false);

	private final String code;

	private final boolean threshold;

	MarkerKind(String code, boolean threshold) {
		this.code = code;
		this.threshold = threshold;
	}

	/**
	 * The name used in rule packs and the API.
	 * @return lower case with hyphens
	 */
	public String code() {
		return this.code;
	}

	public boolean needsThreshold() {
		return this.threshold;
	}

	/**
	 * Whether the event belongs to the spring side of the season.
	 * @return true for spring, false for fall
	 */
	public boolean spring() {
		return this == LAST_SPRING_FREEZE || this == NIGHTS_WARM_TO || this == GROUND_THAW;
	}

}
