package org.leafward.climate.core.water;

/**
 * A dry spell: a number of days each with less than a quarter of an inch of rain and with
 * less than half an inch in total. Common practice in watering advice of US extension
 * services; no single source.
 */
public final class DrySpell {

	/** Rain from which a day is wet, mm: a quarter of an inch. */
	public static final double WET_DAY = 6.35;

	/** Rain from which a spell is wet, mm: half an inch. */
	public static final double WET_SPELL = 12.7;

	private DrySpell() {
	}

	/**
	 * Tells for each day whether the days up to it are a dry spell.
	 * @param rain of each day, mm; NaN where it is unknown, which no spell reaches across
	 * @param days length of a spell, 1 or more
	 * @return true where the last {@code days} days, this one included, are dry; false in
	 * the first days, before there are so many
	 * @throws IllegalArgumentException when the length is below 1
	 */
	public static boolean[] ends(double[] rain, int days) {
		Bounds.check("length of a dry spell in days", days, 1, 3660);
		boolean[] ends = new boolean[rain.length];
		int run = 0;
		for (int day = 0; day < rain.length; day++) {
			run = (rain[day] < WET_DAY) ? run + 1 : 0;
			ends[day] = run >= days && sum(rain, day - days + 1, day) < WET_SPELL;
		}
		return ends;
	}

	private static double sum(double[] rain, int from, int to) {
		double sum = 0;
		for (int day = from; day <= to; day++) {
			sum += rain[day];
		}
		return sum;
	}

	/**
	 * How long it has been dry on each day.
	 * @param rain of each day, mm; NaN where it is unknown
	 * @return the most days, counted back from each day, that are a dry spell; 0 on a wet
	 * or unknown day
	 */
	public static int[] lengths(double[] rain) {
		int[] lengths = new int[rain.length];
		int begin = 0;
		double sum = 0;
		for (int day = 0; day < rain.length; day++) {
			if (!(rain[day] < WET_DAY)) {
				begin = day + 1;
				sum = 0;
				continue;
			}
			sum += rain[day];
			while (sum >= WET_SPELL) {
				sum -= rain[begin++];
			}
			lengths[day] = day - begin + 1;
		}
		return lengths;
	}

}
