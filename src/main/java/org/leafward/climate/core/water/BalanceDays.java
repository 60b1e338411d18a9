package org.leafward.climate.core.water;

/**
 * What comes of a balance: one value for each day in each array. Made once and written to
 * by {@link RootZoneBalance}; can be used again for another run over as many days.
 *
 * @param loss what the plants would lose without stress ETc, mm
 * @param actual what they lose, mm
 * @param infiltrated rain that enters the root zone, mm
 * @param runoff mm
 * @param stress coefficient Ks during the day, 0 to 1
 * @param readily readily available water RAW of the day, mm
 * @param percolation out of the root zone, mm
 * @param depletion at the end of the day, mm
 */
public record BalanceDays(double[] loss, double[] actual, double[] infiltrated, double[] runoff, double[] stress,
		double[] readily, double[] percolation, double[] depletion) {

	/**
	 * Makes room for a number of days.
	 * @param days 0 or more
	 * @return zeroes
	 */
	public static BalanceDays of(int days) {
		return new BalanceDays(new double[days], new double[days], new double[days], new double[days], new double[days],
				new double[days], new double[days], new double[days]);
	}

	/**
	 * Number of days.
	 * @return 0 or more
	 */
	public int days() {
		return this.loss.length;
	}

	/**
	 * How moist the root zone is in the evening of a day.
	 * @param day index of the day
	 * @return the state
	 */
	public Moisture moisture(int day) {
		return Moisture.of(this.depletion[day], this.readily[day]);
	}

	/**
	 * Whether watering became due: the readily available water was used up by the evening
	 * of this day and not yet by that of the day before. FAO-56, chapter 8, would have
	 * irrigation come before or at this moment.
	 * @param day index of the day
	 * @return true on the first of several such evenings
	 */
	public boolean due(int day) {
		return moisture(day) == Moisture.STRESSED && (day == 0 || moisture(day - 1) != Moisture.STRESSED);
	}

}
