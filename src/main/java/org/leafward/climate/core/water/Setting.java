package org.leafward.climate.core.water;

/**
 * Whether the sea tempers the air, with the coefficient of equation 50 of FAO Irrigation
 * and Drainage Paper 56.
 */
public enum Setting {

	/** Land masses dominate. */
	INTERIOR(0.16),

	/** On or near a coast, with air from the sea. */
	COASTAL(0.19);

	private final double coefficient;

	Setting(double coefficient) {
		this.coefficient = coefficient;
	}

	/**
	 * The adjustment coefficient kRs.
	 * @return °C to the power of -0.5
	 */
	public double coefficient() {
		return this.coefficient;
	}

}
