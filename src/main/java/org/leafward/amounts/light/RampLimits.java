package org.leafward.amounts.light;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Degrees;
import org.leafward.measure.BadInput;
import org.leafward.measure.NumberWords;

/**
 * The weather that plants on a ramp are kept out of. Day: not below 45 °F and not in
 * wind, California Master Gardener Handbook, 2nd edition, an excerpt read at UC Master
 * Gardeners Santa Clara County. That wind begins at 25 km/h (15 mph) and heat at 35 °C is
 * from memory. The lowest night goes by the crop.
 *
 * @param nightCelsius the plant stays out for no colder night, °C, -10 to 25
 * @param dayCelsius the plant goes out on no day that stays colder, °C
 * @param windKmh nor in more wind, km/h
 * @param heatCelsius nor on a day that gets hotter, °C
 */
public record RampLimits(double nightCelsius, double dayCelsius, double windKmh, double heatCelsius) {

	/** Where the limits come from. */
	public static final String SOURCE = "Day and wind: California Master Gardener Handbook, 2nd edition, read in an "
			+ "excerpt; 25 km/h and 35 °C: from memory";

	private static final double COLDEST_DAY = Degrees.ofFahrenheit(45);

	private static final double WIND = 25;

	private static final double HEAT = 35;

	public RampLimits {
		if (!(nightCelsius >= -10 && nightCelsius <= 25)) {
			throw new BadInput("the coldest night %s is outside -10 to 25".formatted(nightCelsius), "nightCelsius",
					"give the lowest temperature that the plant may stand outside in, °C");
		}
		if (!(dayCelsius < heatCelsius) || !(windKmh > 0)) {
			throw new BadInput(
					"the limits %s to %s °C and %s km/h leave no day".formatted(dayCelsius, heatCelsius, windKmh),
					"dayCelsius", "give a lowest day below the heat, and a wind above 0");
		}
	}

	/**
	 * The usual limits of a day.
	 * @param nightCelsius the plant stays out for no colder night, °C
	 * @return limits
	 */
	public static RampLimits forNights(double nightCelsius) {
		return new RampLimits(nightCelsius, COLDEST_DAY, WIND, HEAT);
	}

	/**
	 * Whether a day keeps the plant in. What isn't known holds nothing up.
	 * @param weather the day
	 * @return why it stays in; empty when it goes out
	 */
	public Optional<Hold> hold(RampWeather weather) {
		Double maximum = weather.maximumCelsius();
		Double wind = weather.windKmh();
		if (maximum != null && maximum < this.dayCelsius) {
			return Optional.of(new Hold(Hold.Kind.COLD,
					"The day stays at " + Degrees.words(maximum) + ", below " + Degrees.words(this.dayCelsius)));
		}
		if (wind != null && wind > this.windKmh) {
			return Optional.of(new Hold(Hold.Kind.WIND, "Wind of " + NumberWords.fixed(wind, 0) + " km/h, more than "
					+ NumberWords.fixed(this.windKmh, 0) + " km/h"));
		}
		if (maximum != null && maximum > this.heatCelsius) {
			return Optional.of(new Hold(Hold.Kind.HEAT,
					"The day gets " + Degrees.words(maximum) + ", above " + Degrees.words(this.heatCelsius)));
		}
		return Optional.empty();
	}

	/**
	 * Whether the plant may stay out for a night.
	 * @param minimumCelsius lowest temperature of the night, °C, null when it isn't known
	 * @return true when it keeps the limit or isn't known
	 */
	public boolean keepsNight(@Nullable Double minimumCelsius) {
		return minimumCelsius == null || minimumCelsius >= this.nightCelsius;
	}

}
