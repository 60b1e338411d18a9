package org.leafward.care.core.plan;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import org.leafward.register.PlantingId;

/**
 * A rule that is for a planting or a site but gives no task in a season.
 *
 * @param planting the planting; null for the site as a whole
 * @param rule {@code pack/rule}
 * @param title title of the rule
 * @param season year of the season
 * @param reason why, in a sentence
 */
public record Gap(@Nullable PlantingId planting, String rule, String title, int season, String reason) {

	/** By title, planting, rule and season, as the database answers them. */
	public static final Comparator<Gap> ORDER = Comparator.comparing(Gap::title)
		.thenComparing((gap) -> String.valueOf(gap.planting()))
		.thenComparing(Gap::rule)
		.thenComparing(Gap::season);

}
