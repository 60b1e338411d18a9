package org.leafward.climate.core.water;

/** How moist a root zone is. */
public enum Moisture {

	/** Less than half of the readily available water is gone (our choice): leave it. */
	WET_ENOUGH("wet enough"),

	/** More is gone, but the plants don't feel it yet. */
	DRYING("drying"),

	/** The readily available water is gone; FAO-56 has plants lose less from here on. */
	STRESSED("stressed");

	private static final double ENOUGH = 0.5;

	private final String words;

	Moisture(String words) {
		this.words = words;
	}

	/**
	 * The state at a depletion.
	 * @param depletion mm
	 * @param readily readily available water, mm
	 * @return the state; on a border the moister one
	 */
	public static Moisture of(double depletion, double readily) {
		if (depletion > readily) {
			return STRESSED;
		}
		return (depletion <= ENOUGH * readily) ? WET_ENOUGH : DRYING;
	}

	public String words() {
		return this.words;
	}

}
