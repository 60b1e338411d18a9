package org.leafward.climate.core;

/**
 * A layer of the soil whose temperature is estimated, with the part of the difference to
 * the air that it makes up in a day.
 * <p>
 * Such a layer trails the air by (1 - rate) / rate days. In even soil a slow wave comes
 * the later the deeper it goes, in proportion to the depth
 * ({@link org.leafward.climate.core.soil.SoilWave#lagAt}). So the upper layer, whose
 * middle lies a quarter as deep as 4 inches, trails by a quarter of the time; what snow
 * adds to it at 4 inches it adds above both. This step from the published depth to the
 * other is ours.
 */
public enum SoilLayer {

	/** At 4 inches, 10 cm: the depth of the published rates. */
	FOUR_INCHES(Rates.OPEN, Rates.SNOW),

	/** From the surface to 2 inches, 5 cm; its middle lies at 1 inch. */
	UPPER(rate(lag(Rates.OPEN) / 4), rate(lag(Rates.OPEN) / 4 + lag(Rates.SNOW) - lag(Rates.OPEN)));

	private final double open;

	private final double snow;

	SoilLayer(double open, double snow) {
		this.open = open;
		this.snow = snow;
	}

	/**
	 * The part that is made up in a day.
	 * @param underSnow whether snow lies
	 * @return 0 to 1
	 */
	public double rate(boolean underSnow) {
		return underSnow ? this.snow : this.open;
	}

	/** Days by which a layer trails the air. */
	static double lag(double rate) {
		return (1 - rate) / rate;
	}

	private static double rate(double lag) {
		return 1 / (1 + lag);
	}

	/** At second hand after Zheng, Hunt and Running, see {@link SoilTemperature}. */
	private static final class Rates {

		static final double OPEN = 0.25;

		static final double SNOW = 0.1;

	}

}
