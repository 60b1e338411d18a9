package org.leafward.climate.core.heat;

/**
 * How heat is counted: method, thresholds and the unit of both.
 *
 * @param method the method
 * @param thresholds in °F or °C
 * @param fahrenheit whether thresholds and degree-days are in °F, else °C
 */
public record HeatMeasure(DegreeDays method, HeatThresholds thresholds, boolean fahrenheit) {

	/** Growing degree units of corn. */
	public static final HeatMeasure CORN = new HeatMeasure(DegreeDays.CORN_86_50, HeatThresholds.CORN, true);

	public HeatMeasure {
		if (method == DegreeDays.CORN_86_50 && !(fahrenheit && thresholds.equals(HeatThresholds.CORN))) {
			throw new IllegalArgumentException("corn units have the thresholds 50 and 86 °F");
		}
	}

	/**
	 * The mean of minimum and maximum above a base.
	 * @param base the threshold
	 * @param fahrenheit its unit
	 * @return the measure of most published tables
	 */
	public static HeatMeasure average(double base, boolean fahrenheit) {
		return new HeatMeasure(DegreeDays.SIMPLE_AVERAGE, HeatThresholds.above(base), fahrenheit);
	}

	/**
	 * The degree-days of a day.
	 * @param low minimum, °C
	 * @param high maximum, °C
	 * @param nextLow minimum of the next day, °C; only the double methods look at it
	 * @return degree-days in the measure's unit; NaN when a temperature that is needed is
	 * NaN
	 */
	public double degreeDays(double low, double high, double nextLow) {
		return this.method.of(own(low), own(high), own(nextLow), this.thresholds);
	}

	private double own(double celsius) {
		return this.fahrenheit ? celsius * 1.8 + 32 : celsius;
	}

}
