package org.leafward.feeds;

import java.util.UUID;

/**
 * A feed ended because no program had fetched it for long.
 *
 * @param feed identifier of the feed
 * @param owner whose it was
 */
public record FeedExpired(UUID feed, UUID owner) {
}
