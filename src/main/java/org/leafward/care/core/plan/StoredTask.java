package org.leafward.care.core.plan;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;

/**
 * A task as it stands in the database, as far as planning cares.
 *
 * @param id identifier
 * @param planting what it is for; null for the site as a whole
 * @param plant what readers call the planting
 * @param rule {@code pack/rule}
 * @param season year of the season
 * @param kind what is asked for
 * @param work the kind of work; null in tasks from before works were noted
 * @param window the days
 * @param wording name of the stored words
 * @param state where it stands
 * @param explanation name of the stored explanation
 */
public record StoredTask(TaskId id, @Nullable PlantingId planting, String plant, String rule, int season, TaskKind kind,
		@Nullable Work work, DayWindow window, UUID wording, TaskState state, UUID explanation) {

	boolean looksLike(PlannedTask planned) {
		return this.kind == planned.kind() && this.window.equals(planned.window()) && this.plant.equals(planned.plant())
				&& this.wording.equals(planned.wording().name());
	}

}
