package org.leafward.care.core.plan;

import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskText;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.register.PlantingId;

/**
 * A task as the rules and the site's dates want it.
 *
 * @param id deterministic identifier
 * @param planting what it is for
 * @param plant what readers call the planting
 * @param rule {@code pack/rule}
 * @param season year of the season
 * @param occurrence 0 for a single window, else counted from 1
 * @param kind what is asked for
 * @param window the days
 * @param text the words
 * @param explanation how the days came about
 */
public record PlannedTask(TaskId id, PlantingId planting, String plant, String rule, int season, int occurrence,
		TaskKind kind, DayWindow window, TaskText text, Explanation explanation) {
}
