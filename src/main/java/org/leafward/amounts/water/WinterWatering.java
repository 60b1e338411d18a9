package org.leafward.amounts.water;

import org.leafward.amounts.Degrees;
import org.jspecify.annotations.Nullable;

/**
 * Whether it may be watered on a day in winter: on thawed ground, and above 40 °F, so
 * that the water soaks in before it freezes (Fall and Winter Watering, Fact Sheet 7.211,
 * Colorado State University Extension, read in a repost).
 *
 * @param allowed whether it may; null when that isn't known
 * @param reason why, a sentence
 */
public record WinterWatering(@Nullable Boolean allowed, String reason) {

	/** The day is to get warmer than this, °C: 40 °F. */
	public static final double LEAST_CELSIUS = Degrees.ofFahrenheit(40);

	/**
	 * Judges a day.
	 * @param frozen whether the ground is frozen; null when not known
	 * @param maximumCelsius highest temperature of the day, °C; null when not known
	 * @return the answer
	 */
	public static WinterWatering on(@Nullable Boolean frozen, @Nullable Double maximumCelsius) {
		if (Boolean.TRUE.equals(frozen)) {
			return new WinterWatering(false, "The ground is frozen; water would run off and make ice.");
		}
		if (maximumCelsius != null && maximumCelsius <= LEAST_CELSIUS) {
			return new WinterWatering(false, "The day gets no warmer than %s; wait for one above %s."
				.formatted(Degrees.words(maximumCelsius), Degrees.words(LEAST_CELSIUS)));
		}
		if (frozen == null || maximumCelsius == null) {
			return new WinterWatering(null, "Look first: the ground must be thawed and the day above %s."
				.formatted(Degrees.words(LEAST_CELSIUS)));
		}
		return new WinterWatering(true,
				"The ground is thawed and the day gets to %s; water by noon.".formatted(Degrees.words(maximumCelsius)));
	}

}
