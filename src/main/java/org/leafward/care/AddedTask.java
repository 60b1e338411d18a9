package org.leafward.care;

import org.leafward.care.core.rule.Work;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;

/**
 * A task that another module calls for.
 *
 * @param key which of those that it is added for, lower case with hyphens, at most 60
 * characters; with the season it makes the task's identifier, so it never changes
 * @param season year of the season; the same key can come in several
 * @param kind what is asked for, no day of a ramp
 * @param work the kind of work
 * @param window its days, in the site's time zone
 * @param text the words
 * @param explanation how it came about, and its days
 */
public record AddedTask(String key, int season, TaskKind kind, Work work, DayWindow window, TaskText text,
		Explanation explanation) {

	private static final int LONGEST_TITLE = 60;

	/**
	 * Checks key, kind and title.
	 * @throws BadInput when one of them can't be used
	 */
	public AddedTask {
		if (!key.matches("[a-z0-9]+(-[a-z0-9]+)*") || key.length() > 60) {
			throw new BadInput("'%s' is no key".formatted(key), "key", "write lower case letters, digits and hyphens");
		}
		if (kind == TaskKind.RAMP_DAY) {
			throw new BadInput("days of ramps come from rules only", "kind", "add something to do, leave or look for");
		}
		if (text.title().length() > LONGEST_TITLE) {
			throw new BadInput("the title has %d characters".formatted(text.title().length()), "title",
					"use at most %d".formatted(LONGEST_TITLE));
		}
	}

}
