package org.leafward.climate.core.water;

/**
 * The layer at the top of the soil that dries by evaporation: the part Ke of the dual
 * crop coefficient Kc = Kcb + Ke. Source: FAO Irrigation and Drainage Paper 56, chapter
 * 7, by equation number. Water comes early in the day, as in its example 35.
 *
 * @param readily readily evaporable water REW, mm, above 0
 * @param total evaporable water TEW, mm, above {@code readily}
 */
public record SurfaceLayer(double readily, double total) {

	public SurfaceLayer {
		Bounds.check("readily evaporable water in mm", readily, 0.1, 100);
		if (!(total > readily && total <= 100)) {
			throw new IllegalArgumentException(
					"evaporable water %s mm is not above the readily evaporable %s mm, or above 100".formatted(total,
							readily));
		}
	}

	/**
	 * The most that crop and soil together can lose, equation 72.
	 * @param wind at 2 m, m/s, 1 to 6
	 * @param lowestHumidity of the day, %, 20 to 80
	 * @param height of the plants, m, 0 to 20
	 * @param basal Kcb, 0 to 2
	 * @return Kc max
	 * @throws IllegalArgumentException when something is out of its bounds
	 */
	public static double highest(double wind, double lowestHumidity, double height, double basal) {
		Bounds.check("wind in m/s", wind, 1, 6);
		Bounds.check("lowest humidity in %", lowestHumidity, 20, 80);
		double climate = (0.04 * (wind - 2) - 0.004 * (lowestHumidity - 45))
				* Math.pow(Bounds.check("height of the plants in m", height, 0, 20) / 3, 0.3);
		return Math.max(1.2 + climate, Bounds.check("basal coefficient", basal, 0, 2) + 0.05);
	}

	/**
	 * Part of the ground that plants cover, equation 76.
	 * @param basal Kcb, 0 to 2
	 * @param lowest Kc min, of dry bare soil, 0.15 to 0.20
	 * @param highest Kc max
	 * @param height of the plants, m
	 * @return 0 to 0.99
	 */
	public static double cover(double basal, double lowest, double highest, double height) {
		double part = Math.max(0.01, basal - lowest) / (highest - lowest);
		return Math.max(0, Math.min(0.99, Math.pow(part, 1 + 0.5 * height)));
	}

	/**
	 * Part of the ground that is both bare and wetted, equation 75.
	 * @param cover part that plants cover, 0 to 0.99
	 * @param wetted part that water reaches, 0.01 to 1
	 * @param underPlants whether the water drips under the plants, which shade it
	 * (example 34)
	 * @return 0.01 or more
	 */
	public static double exposed(double cover, double wetted, boolean underPlants) {
		double reached = underPlants ? wetted * (1 - 2.0 / 3 * cover) : wetted;
		return Math.max(0.01, Math.min(1 - cover, reached));
	}

	/**
	 * How freely the layer gives water, equation 74.
	 * @param depletion water that is gone from it, mm, 0 to {@code total}
	 * @return Kr, 0 to 1
	 */
	public double reduction(double depletion) {
		return (depletion <= this.readily) ? 1 : Math.max(0, (this.total - depletion) / (this.total - this.readily));
	}

	/**
	 * The part of the soil, equation 71.
	 * @param reduction Kr
	 * @param highest Kc max
	 * @param basal Kcb
	 * @param exposed part of the ground that is both bare and wetted
	 * @return Ke
	 */
	public static double evaporation(double reduction, double highest, double basal, double exposed) {
		return Math.max(0, Math.min(reduction * (highest - basal), exposed * highest));
	}

	/**
	 * One day, equations 74, 71, 79 and 77 in this order, without transpiration from the
	 * layer.
	 * @param depletion at the end of the day before, mm, 0 to {@code total}
	 * @param day what comes in and pulls
	 * @return what comes of it
	 */
	public Evening after(double depletion, Day day) {
		double percolation = Math.max(0, day.water - depletion);
		double start = Math.max(0, depletion - day.water);
		double reduction = reduction(start);
		double coefficient = evaporation(reduction, day.highest, day.basal, day.exposed);
		double end = Math.min(this.total, start + coefficient * day.reference / day.exposed);
		return new Evening(reduction, coefficient, percolation, end);
	}

	/**
	 * A day of the layer.
	 *
	 * @param reference evapotranspiration, mm
	 * @param water rain less runoff, and irrigation over the wetted part, mm
	 * @param highest Kc max
	 * @param basal Kcb
	 * @param exposed part of the ground that is both bare and wetted
	 */
	public record Day(double reference, double water, double highest, double basal, double exposed) {
	}

	/**
	 * The layer in the evening.
	 *
	 * @param reduction Kr
	 * @param coefficient Ke
	 * @param percolation out of the layer, mm
	 * @param depletion at the end of the day, mm
	 */
	public record Evening(double reduction, double coefficient, double percolation, double depletion) {
	}

}
