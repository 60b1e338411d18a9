package org.leafward.climate.source.ghcn;

import java.util.List;
import org.leafward.climate.LineProblem;
import org.leafward.climate.core.DailyRecord;

/**
 * What was read from a station file.
 *
 * @param record the values
 * @param lines lines in the file
 * @param kept values taken
 * @param flagged values left out because they failed quality control
 * @param missing days marked as missing in the file
 * @param problems the first problems, see {@link GhcnReader#MOST_PROBLEMS}
 * @param problemsInAll how many problems there were
 */
public record GhcnFile(DailyRecord record, long lines, long kept, long flagged, long missing,
		List<LineProblem> problems, long problemsInAll) {
}
