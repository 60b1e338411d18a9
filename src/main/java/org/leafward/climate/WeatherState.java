package org.leafward.climate;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;

/**
 * A state of the weather at a place on a day, that care waits for or is put off by.
 *
 * @param kind which state
 * @param holds whether it holds; null when the figures for it are not known, which is
 * never taken for a no
 * @param explanation the figures and the thresholds that led to the answer
 */
public record WeatherState(Kind kind, @Nullable Boolean holds, Explanation explanation) {

	/** The states, in the order in which readers are told. */
	public enum Kind {

		/** A shelter minimum at or below 0 °C is forecast within three days. */
		FROST_AHEAD("frost ahead"),

		/**
		 * A shelter minimum at or below -2.2 °C (28 °F) is forecast within three days.
		 */
		HARD_FREEZE_AHEAD("hard freeze ahead"),

		/**
		 * A maximum of 32.2 °C (90 °F) with wind or dry air is forecast, after little
		 * rain.
		 */
		HOT_DRY_WIND("hot dry wind"),

		/** A maximum at or above 35 °C (95 °F) is forecast within three days. */
		GREAT_HEAT_AHEAD("great heat ahead"),

		/** Two weeks without rain that counts. */
		DRY_SPELL("dry spell"),

		/** Three weeks without rain that counts. */
		LONG_DRY_SPELL("long dry spell"),

		/**
		 * The day's maximum is above 4.4 °C (40 °F), enough to water on thawed ground.
		 */
		THAW_DAY("thaw day"),

		/** Three inches of new snow or more. */
		HEAVY_SNOW("heavy new snow");

		private final String words;

		Kind(String words) {
			this.words = words;
		}

		public String words() {
			return this.words;
		}

	}

}
