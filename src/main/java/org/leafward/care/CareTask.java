package org.leafward.care;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.core.rule.Work;
import org.leafward.measure.DayWindow;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/**
 * A dated piece of care for one planting, or for a site as a whole, in one season.
 *
 * @param id the same on any machine for the same planting or site, rule, season and
 * occurrence
 * @param planting what it is for; null when it is for the site as a whole
 * @param plant what readers call the planting, for example "hedge by the gate (common
 * boxwood)"
 * @param site where
 * @param siteName what readers call the site
 * @param person whose site it is
 * @param rule the rule it comes from, {@code pack/rule}; for one that another module
 * added what it was added for, {@code case:key}
 * @param season year of the season
 * @param occurrence 0 for a single window, else the number of the repeat or the ramp day,
 * counted from 1; the day of the year for a single day that the weather picked; a
 * thousand for each day of the year up to a soil test, and then the same
 * @param kind what is asked for
 * @param window first and last day, in the site's time zone
 * @param text the words
 * @param state where it stands
 * @param withdrawnBecause the reason, for withdrawn and skipped tasks; one that was done
 * all the same keeps it, in case that is undone
 * @param sequence number of visible changes since it was first planned
 * @param createdAt when it was first planned
 * @param changedAt when a reader last saw something change, whole seconds
 * @param work the kind of work; null in tasks from before works were noted
 * @param packVersion version of the rule pack in which its rule last changed when it was
 * written; 0 in tasks from before versions were noted
 */
public record CareTask(TaskId id, @Nullable PlantingId planting, String plant, SiteId site, String siteName,
		PersonId person, String rule, int season, int occurrence, TaskKind kind, DayWindow window, TaskText text,
		TaskState state, @Nullable String withdrawnBecause, int sequence, Instant createdAt, Instant changedAt,
		@Nullable Work work, int packVersion) {

	/**
	 * A task from before works and versions were noted.
	 * @param id identifier
	 * @param planting what it is for; null when it is for the site as a whole
	 * @param plant what readers call the planting
	 * @param site where
	 * @param siteName what readers call the site
	 * @param person whose site it is
	 * @param rule the rule it comes from
	 * @param season year of the season
	 * @param occurrence which of several
	 * @param kind what is asked for
	 * @param window first and last day
	 * @param text the words
	 * @param state where it stands
	 * @param withdrawnBecause the reason, for withdrawn tasks
	 * @param sequence number of visible changes
	 * @param createdAt when it was first planned
	 * @param changedAt when a reader last saw something change
	 */
	public CareTask(TaskId id, @Nullable PlantingId planting, String plant, SiteId site, String siteName,
			PersonId person, String rule, int season, int occurrence, TaskKind kind, DayWindow window, TaskText text,
			TaskState state, @Nullable String withdrawnBecause, int sequence, Instant createdAt, Instant changedAt) {
		this(id, planting, plant, site, siteName, person, rule, season, occurrence, kind, window, text, state,
				withdrawnBecause, sequence, createdAt, changedAt, null, 0);
	}

	/**
	 * What it is for, a planting or the site.
	 * @return the identifier of either
	 */
	public UUID subject() {
		return (this.planting != null) ? this.planting.value() : this.site.value();
	}

	/**
	 * Whether another module added it.
	 * @return false for tasks of rules
	 */
	public boolean added() {
		return this.rule.indexOf('/') < 0;
	}

}
