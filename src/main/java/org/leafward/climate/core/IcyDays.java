package org.leafward.climate.core;

import java.util.function.LongToIntFunction;
import org.leafward.measure.Season;

/**
 * Days on which rain or snow fell while the minimum was at or below freezing, so that
 * roads may have been salted. The last one of the spring stands for the end of de-icing:
 * an estimate, since nobody keeps a record of the salting itself, snow that falls in mild
 * air is missed, and a trace too small to measure counts for nothing.
 */
public final class IcyDays {

	/** A day that no limit makes icy. */
	private static final int DRY = Integer.MAX_VALUE;

	private IcyDays() {
	}

	/**
	 * The minimum of each day on which at least 0.1 mm fell.
	 * @param record the station's record
	 * @return tenths of °C; {@link DailyRecord#MISSING} where either is not known, and
	 * more than any limit on a dry day
	 */
	static LongToIntFunction minimum(DailyRecord record) {
		return (day) -> {
			short rain = record.value(Element.PRCP, day);
			return (rain == DailyRecord.MISSING) ? DailyRecord.MISSING
					: (rain == 0) ? DRY : record.value(Element.TMIN, day);
		};
	}

	/**
	 * Last such day before midsummer.
	 * @param record the station's record
	 * @param season the season
	 * @param limit highest minimum that counts, tenths of °C
	 * @return the date, or none seen, or left out for missing days
	 */
	public static SeasonOutcome lastSpring(DailyRecord record, Season season, int limit) {
		return FreezeSearch.lastSpring(minimum(record), season, limit);
	}

}
