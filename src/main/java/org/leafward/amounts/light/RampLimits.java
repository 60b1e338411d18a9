package org.leafward.amounts.light;

import org.leafward.amounts.Degrees;
import org.leafward.measure.BadInput;

/**
 * The weather that plants on a ramp are kept out of, for the words of its days; whoever
 * has a forecast says which days are held. Day: not below 45 °F and not in wind,
 * California Master Gardener Handbook, 2nd edition, an excerpt read at UC Master
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

}
