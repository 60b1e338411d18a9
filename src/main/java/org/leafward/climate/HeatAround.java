package org.leafward.climate;

import org.jspecify.annotations.Nullable;

/**
 * What another station would have as the sum of degree-days at a place, by the same day
 * and rules; so a reader sees how far to trust the one that is used.
 *
 * @param station the other station
 * @param distance km
 * @param sum degree-days, moved to the place; null when its record can't tell
 */
public record HeatAround(Station station, double distance, @Nullable Double sum) {
}
