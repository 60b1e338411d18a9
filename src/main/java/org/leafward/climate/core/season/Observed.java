package org.leafward.climate.core.season;

import java.time.LocalDate;
import java.util.Optional;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;

/** How far a record goes. */
public final class Observed {

	private Observed() {
	}

	/**
	 * The day up to which both temperatures are there, gaps inside apart.
	 * @param record the record
	 * @return the earlier one of the last minimum and the last maximum
	 */
	public static Optional<LocalDate> last(DailyRecord record) {
		return record.lastDay(Element.TMIN)
			.flatMap((low) -> record.lastDay(Element.TMAX).map((high) -> low.isBefore(high) ? low : high));
	}

}
