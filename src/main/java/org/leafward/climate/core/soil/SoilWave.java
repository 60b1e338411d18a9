package org.leafward.climate.core.soil;

/**
 * A wave of temperature that goes down from the surface into even soil: the solution of
 * the heat equation with T(z, t) = mean + amplitude exp(-z/d) sin(2πt/period - z/d) and
 * the damping depth d = sqrt(diffusivity · period / π) (Rain or Shine, Oklahoma State
 * University, 13.4).
 *
 * @param mean mean temperature, °C
 * @param amplitude half of the range at the surface, °C, 0 or more
 * @param period seconds, above 0
 * @param diffusivity thermal diffusivity of the soil, m²/s, above 0; about 0.2e-6 (dry
 * peat) to 1e-6 (wet sand), from memory
 */
public record SoilWave(double mean, double amplitude, double period, double diffusivity) {

	/** Seconds of a day. */
	public static final double DAY = 86_400;

	/** Seconds of a year of 365.25 days. */
	public static final double YEAR = 365.25 * DAY;

	public SoilWave {
		if (!(Double.isFinite(mean) && amplitude >= 0 && period > 0 && diffusivity > 0)) {
			throw new IllegalArgumentException("no wave of mean %s, amplitude %s, period %s, diffusivity %s"
				.formatted(mean, amplitude, period, diffusivity));
		}
	}

	/**
	 * Depth at which the wave is down to 1/e, 37 %.
	 * @return m
	 */
	public double dampingDepth() {
		return Math.sqrt(this.diffusivity * this.period / Math.PI);
	}

	/**
	 * Half of the range at a depth.
	 * @param depth m, 0 or more
	 * @return °C
	 */
	public double amplitudeAt(double depth) {
		return this.amplitude * Math.exp(-depth / dampingDepth());
	}

	/**
	 * How much later the wave comes at a depth.
	 * @param depth m, 0 or more
	 * @return seconds
	 */
	public double lagAt(double depth) {
		return depth / dampingDepth() * this.period / (2 * Math.PI);
	}

	/**
	 * The temperature at a depth.
	 * @param depth m, 0 or more
	 * @param time seconds since the surface went up through its mean
	 * @return °C
	 */
	public double celsius(double depth, double time) {
		return this.mean + amplitudeAt(depth) * Math.sin(2 * Math.PI * (time - lagAt(depth)) / this.period);
	}

}
