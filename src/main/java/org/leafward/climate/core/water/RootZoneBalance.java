package org.leafward.climate.core.water;

/**
 * The daily water balance of a root zone. Source: FAO Irrigation and Drainage Paper 56,
 * chapter 8, equations 81 to 88, without capillary rise, with these rules:
 * <ul>
 * <li>Rain and irrigation come early in the day, as in its example 38: they fill the root
 * zone, what is too much percolates, then the plants draw. Equation 88 as printed has the
 * plants draw first; that is for water late in the day and gives less percolation.</li>
 * <li>Rain below a fifth of the day's evapotranspiration wets leaves and surface only and
 * counts nothing (page 170).</li>
 * <li>Of the rest a fixed part runs off, none by default (page 153).</li>
 * <li>The plants never draw below the wilting point, however small the root zone.</li>
 * </ul>
 */
public final class RootZoneBalance {

	/** Rain that counts nothing, as a part of the day's evapotranspiration. */
	public static final double IGNORED_RAIN = 0.2;

	private RootZoneBalance() {
	}

	/**
	 * Runs the balance. Makes nothing on the heap.
	 * @param zone the root zone
	 * @param start depletion before the first day, mm, 0 to the zone's available water
	 * @param in what comes and pulls
	 * @param out where to write, for at least as many days
	 * @return depletion at the end, mm
	 * @throws IllegalArgumentException when the start is out of its bounds, there is room
	 * for fewer days, or an amount is negative or not a number
	 */
	public static double run(RootZone zone, double start, DailyWater in, BalanceDays out) {
		double total = zone.available();
		Bounds.check("depletion in mm", start, 0, total);
		if (out.days() < in.days()) {
			throw new IllegalArgumentException("room for %d days, not for %d".formatted(out.days(), in.days()));
		}
		double depletion = start;
		for (int day = 0; day < in.days(); day++) {
			double loss = in.factor()[day] * in.reference()[day];
			double rain = in.rain()[day];
			double irrigation = in.irrigation()[day];
			// Written so that it catches NaN too.
			if (!(loss >= 0 && rain >= 0 && irrigation >= 0)) {
				throw new IllegalArgumentException("day %d has a negative or missing amount".formatted(day));
			}
			double counted = (rain < IGNORED_RAIN * in.reference()[day]) ? 0 : rain;
			double runoff = zone.runoff() * counted;
			double water = counted - runoff + irrigation;
			double percolation = Math.max(0, water - depletion);
			double morning = Math.max(0, depletion - water);
			double fraction = zone.adjusted() ? SoilWater.fraction(zone.fraction(), loss) : zone.fraction();
			double readily = fraction * total;
			double stress = SoilWater.stress(total, readily, morning);
			double actual = Math.min(stress * zone.salt() * loss, total - morning);
			depletion = Math.min(total, morning + actual);
			out.loss()[day] = loss;
			out.actual()[day] = actual;
			out.infiltrated()[day] = counted - runoff;
			out.runoff()[day] = runoff;
			out.stress()[day] = stress;
			out.readily()[day] = readily;
			out.percolation()[day] = percolation;
			out.depletion()[day] = depletion;
		}
		return depletion;
	}

}
