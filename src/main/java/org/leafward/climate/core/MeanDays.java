package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.BitSet;

/**
 * The mean of minimum and maximum of each day of a record, short gaps bridged as
 * {@link Gaps} does, ready to be added up for many places. A maximum below the minimum,
 * which some records have, counts as the minimum. Two bytes a day and a bit.
 */
final class MeanDays {

	/** Minimum and maximum are tenths of °C, bridged ones halves of them. */
	private static final double PARTS = 40;

	private final long first;

	private final short[] parts;

	/** The days with both; those after the last one have neither. */
	private final BitSet complete = new BitSet();

	/**
	 * Draws the means.
	 * @param record the station's record
	 */
	MeanDays(DailyRecord record) {
		this.first = record.firstDay(Element.TMIN).map(LocalDate::toEpochDay).orElse(0L);
		long last = record.lastDay(Element.TMIN).map(LocalDate::toEpochDay).orElse(-1L);
		this.parts = new short[(int) (last - this.first + 1)];
		for (int at = 0; at < this.parts.length; at++) {
			long day = this.first + at;
			double low = Gaps.bridged(record, Element.TMIN, day);
			double high = Gaps.bridged(record, Element.TMAX, day);
			double both = low + Math.max(low, high);
			this.parts[at] = Double.isNaN(both) ? DailyRecord.MISSING : (short) Math.round(2 * both);
			this.complete.set(at, !Gaps.temperatureMissing(record, day));
		}
	}

	/**
	 * The mean of a day.
	 * @param epochDay days since 1970-01-01
	 * @return °C; NaN where it can't be bridged
	 */
	double celsius(long epochDay) {
		long at = epochDay - this.first;
		short own = (at >= 0 && at < this.parts.length) ? this.parts[(int) at] : DailyRecord.MISSING;
		return (own != DailyRecord.MISSING) ? own / PARTS : Double.NaN;
	}

	/**
	 * The next day whose minimum or maximum is missing.
	 * @param epochDay from this day on, days since 1970-01-01
	 * @return such a day; every day outside the record is one
	 */
	long nextMissing(long epochDay) {
		long at = epochDay - this.first;
		return (at < 0 || at >= this.parts.length) ? epochDay : this.first + this.complete.nextClearBit((int) at);
	}

}
