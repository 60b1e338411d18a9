package org.leafward.climate.core.chill;

/**
 * The dynamic model of chill: Fishman, Erez and Couvillon (1987), Journal of Theoretical
 * Biology 124:473-483 and 126:309-321, with the constants and the order of steps that
 * public programs have; the papers were not at hand. Cold builds up an intermediate,
 * which warmth destroys again; whenever it reaches one, part of it becomes a portion that
 * stays. One portion takes about 28 to 30 hours at 6 °C (from memory).
 * <p>
 * Fed hour by hour. Not for use by several threads.
 */
public final class DynamicModel {

	private static final double E0 = 4153.5;

	private static final double E1 = 12888.8;

	private static final double A0 = 139_500;

	private static final double A1 = 2.567e18;

	private static final double SLOPE = 1.6;

	private static final double TF = 277;

	/** The model's own, not 273.15. */
	private static final double KELVIN = 273;

	private double intermediate;

	private double portions;

	/**
	 * Adds an hour.
	 * @param celsius its temperature, -100 to 70 °C
	 * @throws IllegalArgumentException outside that
	 */
	public void hour(double celsius) {
		if (!(celsius >= -100 && celsius <= 70)) {
			throw new IllegalArgumentException("temperature %s is outside -100 to 70 °C".formatted(celsius));
		}
		double kelvin = celsius + KELVIN;
		double even = A0 / A1 * Math.exp((E1 - E0) / kelvin);
		double end = even - (even - this.intermediate) * Math.exp(-A1 * Math.exp(-E1 / kelvin));
		if (end < 1) {
			this.intermediate = end;
			return;
		}
		double steep = Math.exp(SLOPE * TF * (kelvin - TF) / kelvin);
		double fixed = steep / (1 + steep) * end;
		this.portions += fixed;
		this.intermediate = end - fixed;
	}

	/**
	 * The portions so far.
	 * @return chill portions, 0 or more
	 */
	public double portions() {
		return this.portions;
	}

}
