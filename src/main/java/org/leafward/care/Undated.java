package org.leafward.care;

import org.jspecify.annotations.Nullable;
import org.leafward.register.PlantingId;

/**
 * A rule that is for a planting but can't be dated at its site.
 *
 * @param planting the planting; null for the site as a whole
 * @param rule {@code pack/rule}
 * @param title title of the rule
 * @param season year of the season
 * @param reason why, in a sentence
 */
public record Undated(@Nullable PlantingId planting, String rule, String title, int season, String reason) {
}
