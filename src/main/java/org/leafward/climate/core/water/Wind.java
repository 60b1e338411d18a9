package org.leafward.climate.core.water;

/**
 * Mean wind of a day or an hour.
 *
 * @param speed m/s, 0 to 100
 * @param height at which it was measured, m above the ground, 0.5 to 200
 */
public record Wind(double speed, double height) {

	/** Taken where none was measured, m/s at 2 m (FAO-56, chapter 3). */
	public static final double UNKNOWN = 2;

	/** Air is never calmer for the formulas, m/s at 2 m (FAO-56, chapter 3). */
	static final double CALMEST = 0.5;

	public Wind {
		Bounds.check("wind in m/s", speed, 0, 100);
		Bounds.check("height of the wind in m", height, 0.5, 200);
	}

	/**
	 * The speed at 2 m over grass, equation 47 of FAO Irrigation and Drainage Paper 56.
	 * @return m/s
	 */
	public double atTwoMetres() {
		return this.speed * factor(this.height);
	}

	/**
	 * Speed at 2 m as a part of that at another height.
	 * @param height m above the ground
	 * @return 1 at 2 m
	 */
	static double factor(double height) {
		return 4.87 / Math.log(67.8 * height - 5.42);
	}

}
