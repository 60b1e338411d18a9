package org.leafward.care.core.plan;

import java.util.UUID;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.TaskText;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;

/**
 * A task as it stands in the database, as far as planning cares.
 *
 * @param id identifier
 * @param planting what it is for
 * @param plant what readers call the planting
 * @param rule {@code pack/rule}
 * @param season year of the season
 * @param kind what is asked for
 * @param window the days
 * @param text the words
 * @param state where it stands
 * @param explanation name of the stored explanation
 */
public record StoredTask(TaskId id, PlantingId planting, String plant, String rule, int season, TaskKind kind,
		DayWindow window, TaskText text, TaskState state, UUID explanation) {

	boolean looksLike(PlannedTask planned) {
		return this.state == TaskState.PLANNED && this.kind == planned.kind() && this.window.equals(planned.window())
				&& this.plant.equals(planned.plant()) && this.text.equals(planned.text());
	}

}
