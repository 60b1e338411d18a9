package org.leafward.climate.core.light;

/**
 * Light by where it comes from, with what turns one of its measures into another. Source:
 * Thimijan and Heins (1983), HortScience 18:818-822, at second hand, as tabulated in a
 * post to the list bio.net plant-education, October 2001.
 */
public enum LightSource {

	/** Sun and sky. */
	DAYLIGHT(4.57, 54),

	/** Blue sky without the sun, as in shade. */
	BLUE_SKY(4.24, 52),

	/** Metal halide lamp. */
	METAL_HALIDE(4.59, 71),

	/** High-pressure sodium lamp. */
	HIGH_PRESSURE_SODIUM(4.98, 82),

	/** Cool-white fluorescent lamp. */
	COOL_WHITE_FLUORESCENT(4.59, 74),

	/** Incandescent lamp. */
	INCANDESCENT(5.0, 50);

	/** Lux in a foot-candle: square feet in a square metre. */
	public static final double LUX_PER_FOOT_CANDLE = 10.763_910_417;

	private final double micromolesPerJoule;

	private final double luxPerMicromole;

	LightSource(double micromolesPerJoule, double luxPerMicromole) {
		this.micromolesPerJoule = micromolesPerJoule;
		this.luxPerMicromole = luxPerMicromole;
	}

	/**
	 * Photons in the energy between 400 and 700 nm.
	 * @return µmol/J
	 */
	public double micromolesPerJoule() {
		return this.micromolesPerJoule;
	}

	/**
	 * Illuminance for each unit of photon flux density.
	 * @return lux per µmol/m²s
	 */
	public double luxPerMicromole() {
		return this.luxPerMicromole;
	}

	/**
	 * Photon flux density from illuminance.
	 * @param lux 0 or more
	 * @return µmol/m²s
	 */
	public double fluxOfLux(double lux) {
		return lux / this.luxPerMicromole;
	}

	/**
	 * Photon flux density from illuminance.
	 * @param footCandles 0 or more
	 * @return µmol/m²s
	 */
	public double fluxOfFootCandles(double footCandles) {
		return fluxOfLux(footCandles * LUX_PER_FOOT_CANDLE);
	}

}
