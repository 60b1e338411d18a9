package org.leafward.care.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.review.Tally;

/**
 * A year of a site in words, for the page and for paper. Lists are cut; the table of
 * values has everything.
 *
 * @param year the year
 * @param lead what matters
 * @param empty whether nothing is known of it
 * @param soFar whether it is not over
 * @param counts what became of the tasks
 * @param works counts for each kind of work
 * @param plantings counts for each planting
 * @param morePlantings how many plantings were cut
 * @param missed what was missed
 * @param moreMissed how many of these were cut
 * @param leftOut what was left out
 * @param moreLeftOut how many of these were cut
 * @param months what was done
 * @param watered water for each place
 * @param moreWatered how many places were cut
 * @param badTimes what was done inside a hold-off
 * @param moreBadTimes how many of these were cut
 * @param weather what the weather did
 * @param weatherNotes where that is from
 * @param noWeather why nothing is known of it; null when something is
 */
record ReviewView(int year, String lead, boolean empty, boolean soFar, List<Fact> counts, List<CountRow> works,
		List<CountRow> plantings, int morePlantings, List<MissedRow> missed, int moreMissed, List<LeftOutRow> leftOut,
		int moreLeftOut, List<MonthRow> months, List<WaterRow> watered, int moreWatered, List<DoneRow> badTimes,
		int moreBadTimes, List<Fact> weather, List<String> weatherNotes, @Nullable String noWeather) {

	/** Rows of a table of counts that are shown without being opened. */
	static final int FEW = 12;

	/**
	 * Whether the plantings are folded away at first.
	 * @return for many
	 */
	public boolean manyPlantings() {
		return this.plantings.size() > FEW;
	}

	/**
	 * A row of a table of counts.
	 *
	 * @param name a kind of work or a planting
	 * @param own whether the name is one that people gave
	 * @param tally the counts
	 */
	record CountRow(String name, boolean own, Tally tally) {
	}

	/**
	 * Something that was missed.
	 *
	 * @param title what was to be done
	 * @param href its page
	 * @param plant for what
	 * @param own whether that is a name that people gave
	 * @param days when it was last to be done
	 * @param often how often it was missed, empty for once
	 * @param otherwise what it may lead to; null when nobody says
	 * @param why the reason for it
	 * @param next when it comes next
	 */
	record MissedRow(String title, String href, String plant, boolean own, String days, String often,
			@Nullable String otherwise, String why, String next) {
	}

	/**
	 * Something that was left out.
	 *
	 * @param title what was to be done
	 * @param href its page
	 * @param plant for what
	 * @param own whether that is a name that people gave
	 * @param days when
	 * @param reason why, in people's words
	 */
	record LeftOutRow(String title, String href, String plant, boolean own, String days, String reason) {
	}

	/**
	 * A month.
	 *
	 * @param name its name
	 * @param sums how often what was done
	 * @param done one by one
	 * @param more how many were cut
	 */
	record MonthRow(String name, String sums, List<DoneRow> done, int more) {
	}

	/**
	 * Something that was done.
	 *
	 * @param what the work with its amount
	 * @param day on which
	 * @param where the whole site or a planting
	 * @param own whether that is a name that people gave
	 * @param note may be empty
	 * @param holdOff title of the hold-off that it fell into; null without
	 * @param holdOffHref its page
	 * @param taskHref page of the task that it was for; null without
	 */
	record DoneRow(String what, String day, String where, boolean own, String note, @Nullable String holdOff,
			@Nullable String holdOffHref, @Nullable String taskHref) {
	}

	/**
	 * Water for a place.
	 *
	 * @param where the whole site or a planting
	 * @param own whether that is a name that people gave
	 * @param words how much and how often
	 */
	record WaterRow(String where, boolean own, String words) {
	}

}
