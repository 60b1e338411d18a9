package org.leafward.pages;

import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

/**
 * One entry of a dated list, in the words that the fragment {@code fragments :: tasks}
 * prints.
 *
 * @param mark how it is drawn
 * @param title what to do or leave
 * @param plant what readers call the planting
 * @param site what readers call the site; null where it goes without saying
 * @param from first day
 * @param to last day
 * @param href address of the entry's own page, from the root; null when there is none
 * @param note a sentence more, for example why it is no longer needed
 * @param withdrawn whether it is no longer needed; drawn hollow and struck out
 * @param standing where it stands, a sentence; null where that goes without saying
 * @param acts what the reader may do with it; null for nothing
 */
public record TaskLine(Mark mark, String title, String plant, @Nullable String site, LocalDate from, LocalDate to,
		@Nullable String href, @Nullable String note, boolean withdrawn, @Nullable String standing,
		@Nullable TaskActs acts) {

	/**
	 * An entry to be read only.
	 * @param mark how it is drawn
	 * @param title what to do or leave
	 * @param plant what readers call the planting
	 * @param site what readers call the site
	 * @param from first day
	 * @param to last day
	 * @param href address of the entry's own page
	 * @param note a sentence more
	 * @param withdrawn whether it is no longer needed
	 */
	public TaskLine(Mark mark, String title, String plant, @Nullable String site, LocalDate from, LocalDate to,
			@Nullable String href, @Nullable String note, boolean withdrawn) {
		this(mark, title, plant, site, from, to, href, note, withdrawn, null, null);
	}

}
