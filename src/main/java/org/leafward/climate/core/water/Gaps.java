package org.leafward.climate.core.water;

/** Fills days that nobody measured. */
public final class Gaps {

	private Gaps() {
	}

	/**
	 * Fills gaps in place: on a straight line between the days before and after, and with
	 * the nearest known day at both ends.
	 * @param days one value for each day, NaN where it is unknown
	 * @return how many were filled; -1, and nothing is filled, when none is known
	 */
	public static int bridge(double[] days) {
		int before = -1;
		int filled = 0;
		for (int day = 0; day < days.length; day++) {
			if (!Double.isNaN(days[day])) {
				filled += fill(days, before, day);
				before = day;
			}
		}
		return (before < 0) ? -1 : filled + fill(days, before, days.length);
	}

	private static int fill(double[] days, int before, int after) {
		for (int day = before + 1; day < after; day++) {
			if (before < 0) {
				days[day] = days[after];
			}
			else if (after == days.length) {
				days[day] = days[before];
			}
			else {
				days[day] = days[before] + (days[after] - days[before]) * (day - before) / (after - before);
			}
		}
		return after - before - 1;
	}

}
