package org.leafward.care.core.rule;

import org.jspecify.annotations.Nullable;
import org.leafward.climate.DayLength;
import org.leafward.climate.HeatGoal;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.TemperatureThreshold;

/**
 * A local event of the season, with days added.
 *
 * @param marker which event, at which probability
 * @param days days after it
 * @param nextSeason whether the event of the following season is meant
 * @param bounds days of the year that the date keeps to
 * @param floor another event that the date comes no sooner than, where that has a date;
 * null for none
 */
public record MarkerAnchor(MarkerKey marker, Days days, boolean nextSeason, Bounds bounds,
		@Nullable MarkerAnchor floor) implements Anchor {

	/**
	 * An anchor on one event alone.
	 * @param marker which event, at which probability
	 * @param days days after it
	 * @param nextSeason whether the event of the following season is meant
	 * @param bounds days of the year that the date keeps to
	 */
	public MarkerAnchor(MarkerKey marker, Days days, boolean nextSeason, Bounds bounds) {
		this(marker, days, nextSeason, bounds, null);
	}

	@Override
	public String words() {
		return this.days.words(date() + event() + (this.nextSeason ? " of the following season" : ""))
				+ ((this.floor != null) ? ", but no sooner than " + this.floor.words().replaceFirst("^on ", "") : "");
	}

	/** Which of the dates that the event has had, in words a gardener would use. */
	private String date() {
		int probability = this.marker.probability();
		if (this.marker.kind().needsDaylight()) {
			return "";
		}
		if (probability == 50) {
			return "the middle date of ";
		}
		boolean spring = this.marker.kind().spring();
		return (spring == (probability < 50)) ? "the late date (%s) of ".formatted(share(probability, spring))
				: "the early date (%s) of ".formatted(share(probability, spring));
	}

	private static String share(int probability, boolean spring) {
		return "in %d of 100 seasons it comes on or %s it".formatted(probability, spring ? "after" : "before");
	}

	private String event() {
		TemperatureThreshold threshold = this.marker.threshold();
		String degrees = (threshold != null) ? threshold.words() : "the threshold";
		return switch (this.marker.kind()) {
			case LAST_SPRING_FREEZE -> "the last spring freeze at " + degrees;
			case FIRST_FALL_FREEZE -> "the first fall freeze at " + degrees;
			case NIGHTS_WARM_TO -> "nights warming to " + degrees;
			case NIGHTS_COOL_TO -> "nights cooling to " + degrees;
			case GROUND_FREEZE -> "the ground freezing";
			case GROUND_THAW -> "the ground thawing";
			case DEGREE_DAYS -> "degree-days above " + degrees + goal();
			case SOIL_WARMS_TO -> "the soil warming to " + degrees;
			case SOIL_COOLS_TO -> "the soil cooling to " + degrees;
			case DAYS_COOL_TO -> "days cooling to " + degrees;
			case UPPER_SOIL_WARMS_TO -> "the upper soil warming to " + degrees;
			case UPPER_SOIL_COOLS_TO -> "the upper soil cooling to " + degrees;
			case DE_ICING_END -> "the end of de-icing";
			case DAYLIGHT_LENGTHENS_TO -> "the day lengthening to " + daylight();
			case DAYLIGHT_SHORTENS_TO -> "the day shortening to " + daylight();
		};
	}

	private String daylight() {
		DayLength daylight = this.marker.daylight();
		return (daylight != null) ? daylight.words() : "its length";
	}

	private String goal() {
		HeatGoal goal = this.marker.goal();
		return (goal != null) ? " reaching " + goal.words() : "";
	}

}
