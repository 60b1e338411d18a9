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
	GROUND_THAW("ground-thaw", false),

	/** First day on which degree-days above the threshold add up to a sum. */
	DEGREE_DAYS("degree-days", true),

	/**
	 * First day after midwinter on which the five-day mean soil temperature at 4 inches
	 * is at or above the threshold.
	 */
	SOIL_WARMS_TO("soil-warms-to", true),

	/**
	 * First day after midsummer on which the five-day mean soil temperature at 4 inches
	 * is at or below the threshold.
	 */
	SOIL_COOLS_TO("soil-cools-to", true),

	/**
	 * First day after midsummer on which the five-day mean maximum is at or below the
	 * threshold.
	 */
	DAYS_COOL_TO("days-cool-to", true),

	/**
	 * First day after midwinter on which the five-day mean temperature of the upper two
	 * inches of soil is at or above the threshold.
	 */
	UPPER_SOIL_WARMS_TO("upper-soil-warms-to", true),

	/**
	 * First day after midsummer on which the five-day mean temperature of the upper two
	 * inches of soil is at or below the threshold.
	 */
	UPPER_SOIL_COOLS_TO("upper-soil-cools-to", true),

	/**
	 * Last day in spring on which rain or snow fell while the minimum was at or below
	 * freezing: an estimate of the end of de-icing.
	 */
	DE_ICING_END("de-icing-end", false),

	/** First day after the winter solstice with at least so much daylight. */
	DAYLIGHT_LENGTHENS_TO("daylight-lengthens-to", false),

	/** First day after the summer solstice with no more than so much daylight. */
	DAYLIGHT_SHORTENS_TO("daylight-shortens-to", false);

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
	 * Whether the event is a sum of heat, and so needs a {@link HeatGoal}.
	 * @return true for degree-days
	 */
	public boolean needsGoal() {
		return this == DEGREE_DAYS;
	}

	/**
	 * Whether the event is a length of the day, and so needs a {@link DayLength}. It
	 * follows from the sun alone, the same every year.
	 * @return true for daylight
	 */
	public boolean needsDaylight() {
		return this == DAYLIGHT_LENGTHENS_TO || this == DAYLIGHT_SHORTENS_TO;
	}

	/**
	 * How much of what the event hangs on is the daily minimum, so that the microclimate
	 * of a place counts by as much.
	 * @return 1 for freezes and nights; 0.5 for sums of heat, which add up the mean of
	 * minimum and maximum; 0 for soil, ground, days, daylight and roads, which don't lie
	 * in the garden
	 */
	public double nightShare() {
		return switch (this) {
			case LAST_SPRING_FREEZE, FIRST_FALL_FREEZE, NIGHTS_WARM_TO, NIGHTS_COOL_TO -> 1;
			case DEGREE_DAYS -> 0.5;
			case GROUND_FREEZE, GROUND_THAW, SOIL_WARMS_TO, SOIL_COOLS_TO, DAYS_COOL_TO, UPPER_SOIL_WARMS_TO,
					UPPER_SOIL_COOLS_TO, DE_ICING_END, DAYLIGHT_LENGTHENS_TO, DAYLIGHT_SHORTENS_TO ->
				0;
		};
	}

	/**
	 * Whether the event belongs to the spring side of the season, where warmth comes late
	 * in a bad year.
	 * @return true for spring, false for fall
	 */
	public boolean spring() {
		return switch (this) {
			case LAST_SPRING_FREEZE, NIGHTS_WARM_TO, GROUND_THAW, DEGREE_DAYS, SOIL_WARMS_TO, UPPER_SOIL_WARMS_TO,
					DE_ICING_END, DAYLIGHT_LENGTHENS_TO ->
				true;
			case FIRST_FALL_FREEZE, NIGHTS_COOL_TO, GROUND_FREEZE, SOIL_COOLS_TO, DAYS_COOL_TO, UPPER_SOIL_COOLS_TO,
					DAYLIGHT_SHORTENS_TO ->
				false;
		};
	}

}
