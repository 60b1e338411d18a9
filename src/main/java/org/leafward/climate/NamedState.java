package org.leafward.climate;

import java.util.Locale;

/**
 * The questions that have a name of their own, in the order in which readers are told.
 */
public enum NamedState {

	/** A shelter minimum at or below freezing is forecast within three days. */
	FROST_AHEAD("frost ahead", "forecast-min-at-most-32f"),

	/** A shelter minimum that ends the season of hardy plants is forecast. */
	HARD_FREEZE_AHEAD("hard freeze ahead", "forecast-min-at-most-28f"),

	/** Heat with wind or dry air is forecast, after little rain. */
	HOT_DRY_WIND("hot dry wind", "hot-dry-wind"),

	/** A maximum that harms most plants and people is forecast within three days. */
	GREAT_HEAT_AHEAD("great heat ahead", "forecast-max-at-least-95f"),

	/** Two weeks without rain that counts. */
	DRY_SPELL("dry spell", "dry-days-14d"),

	/** Three weeks without rain that counts. */
	LONG_DRY_SPELL("long dry spell", "dry-days-21d"),

	/** At least moderate drought by a station's rain. */
	DROUGHT("drought", "drought-at-least-d1"),

	/** A day warm enough to water on thawed ground. */
	THAW_DAY("thaw day", "day-max-above-40f"),

	/** Three inches of new snow or more. */
	HEAVY_SNOW("heavy new snow", "new-snow-at-least-3in");

	private final String words;

	private final StateQuestion question;

	NamedState(String words, String question) {
		this.words = words;
		this.question = StateQuestion.parse(question);
	}

	/**
	 * The name used in rule packs and the API.
	 * @return lower case with hyphens
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	public String words() {
		return this.words;
	}

	public StateQuestion question() {
		return this.question;
	}

}
