package org.leafward.climate.core.light;

import org.leafward.climate.core.water.Bounds;

/**
 * Light for houseplants. The names and the levels that they begin at are those of
 * University of Illinois Extension, 25 foot-candles as the least is of University of
 * Maryland Extension (both pages read); that a class reaches up to the next is our
 * choice.
 */
public enum IndoorLight {

	/** Less than plants for low light are said to want. */
	TOO_DARK(0),

	/** Low light. */
	LOW(25),

	/** Medium light. */
	MEDIUM(150),

	/** High light. */
	HIGH(300),

	/** Direct sun. */
	DIRECT(1500);

	private final double footCandles;

	IndoorLight(double footCandles) {
		this.footCandles = footCandles;
	}

	/**
	 * The class of a reading.
	 * @param footCandles at the plant by day, 0 to 20,000
	 * @return the class
	 * @throws IllegalArgumentException when the reading is out of its bounds
	 */
	public static IndoorLight of(double footCandles) {
		Bounds.check("light in foot-candles", footCandles, 0, 20_000);
		IndoorLight found = TOO_DARK;
		for (IndoorLight light : values()) {
			if (footCandles >= light.footCandles) {
				found = light;
			}
		}
		return found;
	}

	/**
	 * Where the class begins.
	 * @return foot-candles
	 */
	public double footCandles() {
		return this.footCandles;
	}

	/**
	 * Daily light integral where the class begins.
	 * @param hours of such light in a day, 0 to 24
	 * @param source where it comes from
	 * @return mol/m²
	 * @throws IllegalArgumentException when the hours are out of their bounds
	 */
	public double dailyLight(double hours, LightSource source) {
		return DailyLight.ofFlux(source.fluxOfFootCandles(this.footCandles), hours);
	}

}
