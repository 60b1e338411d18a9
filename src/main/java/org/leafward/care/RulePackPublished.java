package org.leafward.care;

import java.time.Instant;

/**
 * A version of a rule pack was published.
 *
 * @param pack id of the pack
 * @param version its version
 * @param at when
 */
public record RulePackPublished(String pack, int version, Instant at) {
}
