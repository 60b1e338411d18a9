package org.leafward.climate.core;

import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.TemperatureThreshold;

/** Markers and their probabilities in words. */
final class MarkerWords {

	private static final String NCEI = "Probability as NCEI defines it for its freeze normals: in spring the chance of the "
			+ "event on or after the date, in fall on or before it, given that it comes at all that season.";

	private MarkerWords() {
	}

	static String title(MarkerKey key) {
		TemperatureThreshold threshold = key.threshold();
		return name(key.kind()) + ((threshold != null) ? " " + threshold.words() : "")
				+ ((key.goal() != null) ? ", " + key.goal().words() : "")
				+ ((key.daylight() != null) ? " " + key.daylight().words() : "");
	}

	/** The title with which of its dates is meant, where it is not the middle one. */
	static String dated(MarkerKey key) {
		if (key.probability() == 50) {
			return title(key);
		}
		return title(key) + ((key.kind().spring() == (key.probability() < 50)) ? ", late date" : ", early date");
	}

	static String probability(MarkerKey key) {
		if (key.probability() == 50) {
			return "The middle date: in half of the seasons that have it, it comes earlier, in half later.";
		}
		return "In " + key.probability() + " of 100 seasons that have it, it comes on this date or "
				+ (key.kind().spring() ? "later." : "earlier.");
	}

	static String whatItIs(MarkerKind kind) {
		return switch (kind) {
			case LAST_SPRING_FREEZE -> "Last day before midsummer with a minimum at or below the threshold.";
			case FIRST_FALL_FREEZE -> "From midsummer on, the first day with a minimum at or below the threshold.";
			case NIGHTS_WARM_TO ->
				"After midwinter, the first day on which the mean minimum of five nights reaches the threshold; "
						+ "cooler nights may follow.";
			case NIGHTS_COOL_TO ->
				"From midsummer on, the first day on which the mean minimum of five nights is down to the threshold.";
			case GROUND_FREEZE -> "First of five days in a row with soil at 4 inches (10 cm) at or below 0 °C.";
			case GROUND_THAW -> "First of five days in a row with soil at 4 inches (10 cm) above 1.1 °C (34 °F), "
					+ "after the last five days of frozen ground.";
			case DEGREE_DAYS ->
				"First day on which the degree-days since the start add up to the sum; a day gives the mean "
						+ "of its minimum and maximum less the base, or nothing. Up to five missing days in a row are "
						+ "bridged; a longer gap leaves the season out. In the south the start is half a year later.";
			case SOIL_WARMS_TO ->
				"First day after midwinter on which the mean of five days of soil temperature at 4 inches "
						+ "(10 cm) reaches the threshold; cooler days may follow.";
			case SOIL_COOLS_TO ->
				"First day from midsummer on on which the mean of five days of soil temperature at 4 inches "
						+ "(10 cm) is down to the threshold.";
			case DAYS_COOL_TO ->
				"First day from midsummer on on which the mean maximum of five days is down to the threshold.";
			case UPPER_SOIL_WARMS_TO ->
				"First day after midwinter on which the mean of five days of soil temperature from the surface to 2 inches "
						+ "(5 cm) reaches the threshold; cooler days may follow.";
			case UPPER_SOIL_COOLS_TO ->
				"First day from midsummer on on which the mean of five days of soil temperature from the surface to 2 "
						+ "inches (5 cm) is down to the threshold.";
			case DE_ICING_END ->
				"Last day before midsummer on which at least 0.1 mm of rain or snow fell and the minimum was at or below "
						+ "0 °C. An estimate of when roads were last salted: nobody records the salting itself.";
			case DAYLIGHT_LENGTHENS_TO ->
				"First day after the winter solstice with at least so much time from sunrise to sunset.";
			case DAYLIGHT_SHORTENS_TO ->
				"First day after the summer solstice with no more than so much time from sunrise to sunset.";
		};
	}

	static String source(MarkerKind kind) {
		return switch (kind) {
			case GROUND_FREEZE, GROUND_THAW, SOIL_WARMS_TO, SOIL_COOLS_TO ->
				"Estimated from air temperature after Zheng, Hunt and Running 1993, Climate Research 2:183-191, with "
						+ "rates taken at second hand (a quarter of the difference a day, a tenth under snow). "
						+ "A probe in the ground beats this model. " + NCEI;
			case UPPER_SOIL_WARMS_TO, UPPER_SOIL_COOLS_TO ->
				"Estimated as at 4 inches, after Zheng, Hunt and Running 1993 at second hand; the upper layer trails the "
						+ "air by a quarter of the time, as heat flows in even soil, which is our step. A probe in the ground "
						+ "beats this model. " + NCEI;
			case DEGREE_DAYS ->
				"Simple average, as most published sums have it; 1 March is the start of University of New "
						+ "Hampshire Extension, at second hand. " + NCEI;
			default -> NCEI;
		};
	}

	private static String name(MarkerKind kind) {
		return switch (kind) {
			case LAST_SPRING_FREEZE -> "Last spring freeze at";
			case FIRST_FALL_FREEZE -> "First fall freeze at";
			case NIGHTS_WARM_TO -> "Nights warm to";
			case NIGHTS_COOL_TO -> "Nights cool to";
			case GROUND_FREEZE -> "Ground freeze";
			case GROUND_THAW -> "Ground thaw";
			case DEGREE_DAYS -> "Degree-days above";
			case SOIL_WARMS_TO -> "Soil warms to";
			case SOIL_COOLS_TO -> "Soil cools to";
			case DAYS_COOL_TO -> "Days cool to";
			case UPPER_SOIL_WARMS_TO -> "Upper soil warms to";
			case UPPER_SOIL_COOLS_TO -> "Upper soil cools to";
			case DE_ICING_END -> "End of de-icing";
			case DAYLIGHT_LENGTHENS_TO -> "Daylight lengthens to";
			case DAYLIGHT_SHORTENS_TO -> "Daylight shortens to";
		};
	}

}
