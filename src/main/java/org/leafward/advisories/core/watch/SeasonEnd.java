package org.leafward.advisories.core.watch;

import java.time.MonthDay;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.MarkerKey;

/**
 * An end of the season in which a condition is looked out for: so many days from a
 * marker, or a day of the year.
 *
 * @param marker the marker; null with a day of the year
 * @param days from the marker, negative before it
 * @param day day of the year on the northern hemisphere, half a year later in the south;
 * null with a marker
 */
public record SeasonEnd(@Nullable MarkerKey marker, int days, @Nullable MonthDay day) {
}
