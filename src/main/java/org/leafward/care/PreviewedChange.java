package org.leafward.care;

import org.jspecify.annotations.Nullable;
import org.leafward.measure.DayWindow;

/**
 * A task that a draft of rules, or another place, would change.
 *
 * @param site what readers call the site
 * @param county its county
 * @param plant what readers call the planting
 * @param title what the task is called; its rule where that is not known
 * @param before its days now; null when it would be new
 * @param after its days then; null when it would be withdrawn
 */
public record PreviewedChange(String site, String county, String plant, String title, @Nullable DayWindow before,
		@Nullable DayWindow after) {
}
