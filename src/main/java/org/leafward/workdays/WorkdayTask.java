package org.leafward.workdays;

import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskId;
import org.leafward.register.SiteId;

/**
 * A care task that is to be done on a workday.
 *
 * @param task which
 * @param site where
 * @param minutes effort in person-minutes, 1 or more
 * @param pinned whether planning anew leaves it on this day
 * @param why why it stands on this day, a sentence
 * @param team which team does it, 1 to 8
 * @param stop at which of its stops, from 1
 * @param done whether somebody said on the day that it is done
 */
public record WorkdayTask(TaskId task, SiteId site, int minutes, boolean pinned, @Nullable String why, int team,
		int stop, boolean done) {
}
