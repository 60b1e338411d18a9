package org.leafward.advisories.shelf;

/**
 * Whom a message concerned.
 *
 * @param people how many people
 * @param sites how many sites
 * @param plantings how many plantings
 */
public record Counts(long people, long sites, long plantings) {
}
