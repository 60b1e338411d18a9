package org.leafward.climate.source.ncei;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.leafward.climate.LineProblem;
import org.leafward.climate.ObservedDay;

/**
 * What was read from an answer.
 *
 * @param days the days with a value
 * @param lines lines below the column names
 * @param flagged values left out because they failed quality control
 * @param missing values that aren't there
 * @param problems the first problems, at most 50
 * @param problemsInAll how many problems there were
 */
record NceiDays(List<ObservedDay> days, long lines, long flagged, long missing, List<LineProblem> problems,
		long problemsInAll) {

	Optional<LocalDate> last() {
		return this.days.stream().map(ObservedDay::day).max(LocalDate::compareTo);
	}

}
