package org.leafward.advisories;

import java.time.Instant;

/**
 * A decision about a proposal as it is told.
 *
 * @param county code of the county
 * @param by name of who decided
 * @param at when
 * @param why in a few words, may be empty
 */
public record Decided(String county, String by, Instant at, String why) {
}
