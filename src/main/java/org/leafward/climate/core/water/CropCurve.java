package org.leafward.climate.core.water;

/**
 * A crop coefficient through the season: level in the initial and the middle stage,
 * straight lines between them and to the end. Serves for the single coefficient Kc and
 * for the basal coefficient Kcb alike. Source: FAO Irrigation and Drainage Paper 56,
 * equation 66, figures 34 and 37.
 *
 * @param initialDays length of the initial stage, days, 1 or more
 * @param developmentDays length of the development, days, 1 or more
 * @param middleDays length of the middle of the season, days, 1 or more
 * @param lateDays length of the end of the season, days, 1 or more
 * @param initial coefficient at first, 0 to 2
 * @param middle coefficient in the middle, 0 to 2
 * @param end coefficient on the last day, 0 to 2
 */
public record CropCurve(int initialDays, int developmentDays, int middleDays, int lateDays, double initial,
		double middle, double end) {

	public CropCurve {
		for (int days : new int[] { initialDays, developmentDays, middleDays, lateDays }) {
			Bounds.check("length of a stage in days", days, 1, 400);
		}
		for (double coefficient : new double[] { initial, middle, end }) {
			Bounds.check("crop coefficient", coefficient, 0, 2);
		}
	}

	/**
	 * Length of the season.
	 * @return days
	 */
	public int days() {
		return this.initialDays + this.developmentDays + this.middleDays + this.lateDays;
	}

	/**
	 * The coefficient on a day.
	 * @param day 1 for the first day of the season, to {@link #days()}
	 * @return the coefficient
	 * @throws IllegalArgumentException when the day is not in the season
	 */
	public double on(int day) {
		Bounds.check("day of the season", day, 1, days());
		int grown = this.initialDays + this.developmentDays;
		if (day <= this.initialDays) {
			return this.initial;
		}
		if (day <= grown) {
			return this.initial
					+ (this.middle - this.initial) * (day - this.initialDays) / (double) this.developmentDays;
		}
		int ageing = day - grown - this.middleDays;
		return (ageing <= 0) ? this.middle : this.middle + (this.end - this.middle) * ageing / (double) this.lateDays;
	}

}
