package org.leafward.climate.core;

/**
 * Bridges short gaps: a missing value becomes the mean of the nearest values before and
 * after it, when no more than five days in a row are missing. The rule is our choice; how
 * many bridged days a season may have is up to who asks.
 */
public final class Gaps {

	/** Longest gap that is bridged, days. */
	public static final int LONGEST = 5;

	private Gaps() {
	}

	/**
	 * A value, bridged where it is missing.
	 * @param record the record
	 * @param element which element
	 * @param epochDay days since 1970-01-01
	 * @return in the element's unit; NaN in longer gaps and at the ends of the record
	 */
	public static double bridged(DailyRecord record, Element element, long epochDay) {
		short own = record.value(element, epochDay);
		if (own != DailyRecord.MISSING) {
			return own;
		}
		int before = 1;
		while (before <= LONGEST && record.value(element, epochDay - before) == DailyRecord.MISSING) {
			before++;
		}
		int after = 1;
		while (before + after - 1 <= LONGEST && record.value(element, epochDay + after) == DailyRecord.MISSING) {
			after++;
		}
		return (before + after - 1 > LONGEST) ? Double.NaN
				: (record.value(element, epochDay - before) + record.value(element, epochDay + after)) / 2.0;
	}

	/**
	 * Whether the minimum or the maximum of a day is missing.
	 * @param record the record
	 * @param epochDay days since 1970-01-01
	 * @return true when one of both is
	 */
	public static boolean temperatureMissing(DailyRecord record, long epochDay) {
		return record.value(Element.TMIN, epochDay) == DailyRecord.MISSING
				|| record.value(Element.TMAX, epochDay) == DailyRecord.MISSING;
	}

}
