package org.leafward.climate;

import java.util.EnumSet;
import java.util.Set;

/**
 * The kinds of question that care asks of the weather. Most are asked with a threshold.
 * What is forecast is looked at for today and the three days after it.
 */
public enum StateKind {

	/** A minimum at or below the threshold is forecast. */
	FORECAST_MIN_AT_MOST("forecast-min-at-most", "a minimum of %s or less ahead", StateUnit.FAHRENHEIT,
			StateUnit.CELSIUS),

	/** No minimum below the threshold is forecast. */
	FORECAST_MIN_AT_LEAST("forecast-min-at-least", "no minimum below %s ahead", StateUnit.FAHRENHEIT,
			StateUnit.CELSIUS),

	/** A maximum at or above the threshold is forecast. */
	FORECAST_MAX_AT_LEAST("forecast-max-at-least", "a maximum of %s or more ahead", StateUnit.FAHRENHEIT,
			StateUnit.CELSIUS),

	/** No maximum above the threshold is forecast. */
	FORECAST_MAX_AT_MOST("forecast-max-at-most", "no maximum above %s ahead", StateUnit.FAHRENHEIT, StateUnit.CELSIUS),

	/** A heat index at or above the threshold is forecast. */
	HEAT_INDEX_AT_LEAST("heat-index-at-least", "a heat index of %s or more ahead", StateUnit.FAHRENHEIT,
			StateUnit.CELSIUS),

	/** No heat index above the threshold is forecast. */
	HEAT_INDEX_AT_MOST("heat-index-at-most", "no heat index above %s ahead", StateUnit.FAHRENHEIT, StateUnit.CELSIUS),

	/** No day with a mean wind above the threshold is forecast. */
	FORECAST_WIND_AT_MOST("forecast-wind-at-most", "no mean wind above %s ahead", StateUnit.MILES_PER_HOUR,
			StateUnit.METRES_PER_SECOND),

	/** A day with a mean wind at or above the threshold is forecast. */
	FORECAST_WIND_AT_LEAST("forecast-wind-at-least", "a mean wind of %s or more ahead", StateUnit.MILES_PER_HOUR,
			StateUnit.METRES_PER_SECOND),

	/** No rain that can be measured is forecast for so many days, today included. */
	DRY_AHEAD("dry-ahead", "%s without rain ahead", StateUnit.DAYS),

	/** So many days before today without rain that counts. */
	DRY_DAYS("dry-days", "%s without rain that counts", StateUnit.DAYS),

	/** At least so much new snow is forecast for today. */
	NEW_SNOW_AT_LEAST("new-snow-at-least", "new snow of %s or more", StateUnit.INCHES, StateUnit.MILLIMETRES),

	/** A maximum above the threshold is forecast for today. */
	DAY_MAX_ABOVE("day-max-above", "a maximum above %s today", StateUnit.FAHRENHEIT, StateUnit.CELSIUS),

	/**
	 * A maximum of 90 °F with wind or dry air is forecast, after little rain.
	 */
	HOT_DRY_WIND("hot-dry-wind", "hot dry wind", StateUnit.NONE),

	/** At least so much rain in the seven days before today. */
	RAIN_WEEK_AT_LEAST("rain-week-at-least", "rain of %s or more in the last seven days", StateUnit.INCHES,
			StateUnit.MILLIMETRES),

	/** The ground at 4 inches is frozen, by the model of the soil. */
	GROUND_FROZEN("ground-frozen", "frozen ground", StateUnit.NONE),

	/** Drought of at least a class, by the rain of a station. */
	DROUGHT_AT_LEAST("drought-at-least", "drought of %s or worse by a station's rain", StateUnit.DROUGHT);

	private final String code;

	private final String words;

	private final Set<StateUnit> units;

	StateKind(String code, String words, StateUnit first, StateUnit... others) {
		this.code = code;
		this.words = words;
		this.units = EnumSet.of(first, others);
	}

	/**
	 * The name used in rule packs and the API, without the threshold.
	 * @return lower case with hyphens
	 */
	public String code() {
		return this.code;
	}

	/**
	 * The state for readers.
	 * @param threshold the threshold in words
	 * @return a few words
	 */
	String words(String threshold) {
		return this.words.formatted(threshold);
	}

	public Set<StateUnit> units() {
		return Set.copyOf(this.units);
	}

}
