package org.leafward.climate.core.water;

/**
 * What a balance runs on: one value for each day in each array. The arrays are used as
 * they are, not copied, and not written to.
 *
 * @param reference evapotranspiration, mm, 0 or more
 * @param factor plant factor or crop coefficient, 0 or more
 * @param rain mm, 0 or more
 * @param irrigation that reaches the soil, mm, 0 or more
 */
public record DailyWater(double[] reference, double[] factor, double[] rain, double[] irrigation) {

	public DailyWater {
		int days = reference.length;
		if (factor.length != days || rain.length != days || irrigation.length != days) {
			throw new IllegalArgumentException("%d days of evapotranspiration, %d factors, %d of rain, %d of irrigation"
				.formatted(days, factor.length, rain.length, irrigation.length));
		}
	}

	/**
	 * Number of days.
	 * @return 0 or more
	 */
	public int days() {
		return this.reference.length;
	}

}
