package org.leafward.care;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.MarkerKey;

/**
 * How the dates of a site would move if its nights were others.
 *
 * @param markers season markers that hang on nights, in the order of the year
 * @param moved some of the tasks that would get other days, come or go; the soonest first
 * @param more how many of such tasks there are beyond these
 * @param reworded tasks that would keep their days and get other words or amounts
 */
public record PlacePreview(List<MarkerMove> markers, List<PreviewedChange> moved, int more, int reworded) {

	public PlacePreview {
		markers = List.copyOf(markers);
		moved = List.copyOf(moved);
	}

	/**
	 * A season marker, before and after.
	 *
	 * @param key which event
	 * @param before the next date as the site is now; null when there is none
	 * @param after the date of the same season then; null when there is none
	 */
	public record MarkerMove(MarkerKey key, @Nullable LocalDate before, @Nullable LocalDate after) {
	}

}
