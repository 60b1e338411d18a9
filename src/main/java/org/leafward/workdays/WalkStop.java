package org.leafward.workdays;

import org.jspecify.annotations.Nullable;

/**
 * Where a planting stands when one walks through a site.
 *
 * @param place where it comes in the walk, 1 to 1,000
 * @param square in which square of the sketch, 0 to 47; null for none
 */
public record WalkStop(int place, @Nullable Integer square) {
}
