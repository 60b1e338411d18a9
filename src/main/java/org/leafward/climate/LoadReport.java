package org.leafward.climate;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What came of loading observations.
 *
 * @param station whose record
 * @param lines lines in the file, or rows given
 * @param valuesKept values taken
 * @param valuesFlagged values left out because they failed the quality control of their
 * source
 * @param valuesMissing values that the file marks as missing
 * @param problems the first 50 problems
 * @param problemsInAll how many problems there were
 * @param daysInserted days that are new
 * @param daysChanged days with another value than before
 * @param firstDay first day given, if any
 * @param lastDay last day given, if any
 */
public record LoadReport(String station, long lines, long valuesKept, long valuesFlagged, long valuesMissing,
		List<LineProblem> problems, long problemsInAll, long daysInserted, long daysChanged,
		@Nullable LocalDate firstDay, @Nullable LocalDate lastDay) {

	public LoadReport {
		problems = List.copyOf(problems);
	}

}
