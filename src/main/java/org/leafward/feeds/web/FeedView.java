package org.leafward.feeds.web;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.FeedInfo;

/**
 * A feed as JSON.
 *
 * @param id identifier
 * @param createdAt when it was made
 * @param revokedAt since when its address is dead
 * @param lastFetchedAt when a calendar last asked for it, exact to an hour
 */
record FeedView(UUID id, Instant createdAt, @Nullable Instant revokedAt, @Nullable Instant lastFetchedAt) {

	static FeedView of(FeedInfo feed) {
		return new FeedView(feed.id().value(), feed.createdAt(), feed.revokedAt(), feed.lastFetchedAt());
	}

}
