package org.leafward.care;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/**
 * A dated piece of care for one planting in one season.
 *
 * @param id the same on any machine for the same planting, rule, season and occurrence
 * @param planting what it is for
 * @param plant what readers call the planting, for example "hedge by the gate (common
 * boxwood)"
 * @param site where
 * @param siteName what readers call the site
 * @param person whose site it is
 * @param rule the rule it comes from, {@code pack/rule}
 * @param season year of the season
 * @param occurrence 0 for a single window, else the number of the repeat or the ramp day,
 * counted from 1
 * @param kind what is asked for
 * @param window first and last day, in the site's time zone
 * @param text the words
 * @param state where it stands
 * @param withdrawnBecause the reason, for withdrawn tasks
 * @param sequence number of visible changes since it was first planned
 * @param createdAt when it was first planned
 * @param changedAt when a reader last saw something change, whole seconds
 */
public record CareTask(TaskId id, PlantingId planting, String plant, SiteId site, String siteName, PersonId person,
		String rule, int season, int occurrence, TaskKind kind, DayWindow window, TaskText text, TaskState state,
		@Nullable String withdrawnBecause, int sequence, Instant createdAt, Instant changedAt) {
}
