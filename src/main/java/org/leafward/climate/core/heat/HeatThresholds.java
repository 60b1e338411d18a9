package org.leafward.climate.core.heat;

/**
 * The temperatures between which heat counts, in the unit of the temperatures they are
 * used with.
 *
 * @param lower below it nothing counts, -100 to 150
 * @param upper where the cut-off begins, above {@code lower}; infinite without a cut-off
 * @param cutOff what happens above {@code upper}
 */
public record HeatThresholds(double lower, double upper, CutOff cutOff) {

	/** The thresholds of corn, °F. */
	public static final HeatThresholds CORN = new HeatThresholds(50, 86, CutOff.HORIZONTAL);

	public HeatThresholds {
		if (!(lower >= -100 && lower <= 150)) {
			throw new IllegalArgumentException("lower threshold %s is outside -100 to 150 degrees".formatted(lower));
		}
		if (!(upper > lower)) {
			throw new IllegalArgumentException("upper threshold %s is not above %s".formatted(upper, lower));
		}
		if ((cutOff == CutOff.NONE) != Double.isInfinite(upper)) {
			throw new IllegalArgumentException(
					"cut-off %s does not go with upper threshold %s".formatted(cutOff, upper));
		}
	}

	/**
	 * A lower threshold only.
	 * @param lower below it nothing counts
	 * @return thresholds without a cut-off
	 */
	public static HeatThresholds above(double lower) {
		return new HeatThresholds(lower, Double.POSITIVE_INFINITY, CutOff.NONE);
	}

}
