package org.leafward.lookalikes;

/**
 * How many cases of a county were closed with a cause.
 *
 * @param county name of the county
 * @param cause a cause, perhaps one that the key doesn't have any more
 * @param cases how many, 1 or more
 */
public record FoundCount(String county, String cause, int cases) {
}
