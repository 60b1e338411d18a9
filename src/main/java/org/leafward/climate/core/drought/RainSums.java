package org.leafward.climate.core.drought;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;

/**
 * Sums of rain over the same 90 days of each year. Up to four days may be missing, our
 * choice; they count like the mean of the others.
 */
final class RainSums {

	/** Days in a sum. */
	static final int DAYS = 90;

	/** Missing days that are put up with. */
	static final int MISSING_ALLOWED = 4;

	private final DailyRecord record;

	RainSums(DailyRecord record) {
		this.record = record;
	}

	/**
	 * The sum up to a day.
	 * @param last the last day
	 * @return mm; NaN when too many days are missing
	 */
	double upTo(LocalDate last) {
		double sum = 0;
		int known = 0;
		for (long day = last.toEpochDay() - DAYS + 1; day <= last.toEpochDay(); day++) {
			short value = this.record.value(Element.PRCP, day);
			if (value != DailyRecord.MISSING) {
				sum += value;
				known++;
			}
		}
		return (DAYS - known > MISSING_ALLOWED) ? Double.NaN : sum / 10 * DAYS / known;
	}

	/**
	 * The sums of the years before, up to the same day of the calendar.
	 * @param last the last day; 29 February stands for the 28th in other years
	 * @return mm, without the years that can't be told
	 */
	double[] before(LocalDate last) {
		int first = this.record.firstDay(Element.PRCP).map(LocalDate::getYear).orElse(last.getYear());
		return IntStream.rangeClosed(1, Math.max(0, last.getYear() - first))
			.mapToDouble((back) -> upTo(last.minusYears(back)))
			.filter((sum) -> !Double.isNaN(sum))
			.toArray();
	}

	/** The middle of sums. */
	static double median(double[] sums) {
		double[] sorted = sums.clone();
		Arrays.sort(sorted);
		int middle = sorted.length / 2;
		return (sorted.length % 2 == 1) ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
	}

}
