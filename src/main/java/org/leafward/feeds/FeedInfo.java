package org.leafward.feeds;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.core.FeedLife;

/**
 * A feed without its secret address.
 *
 * @param id identifier
 * @param kind whose tasks it holds
 * @param what identifier of the person or the site
 * @param createdAt when it was made
 * @param revokedAt since when its address is dead; null while it lives
 * @param lastFetchedAt when a calendar last asked for it, exact to an hour; null for
 * never
 * @param options what it holds and how it speaks
 */
public record FeedInfo(FeedId id, FeedKind kind, UUID what, Instant createdAt, @Nullable Instant revokedAt,
		@Nullable Instant lastFetchedAt, FeedOptions options) {

	/**
	 * The day on which it ends unless a program fetches it, UTC.
	 * @return 18 months after the last use
	 */
	public LocalDate ends() {
		return FeedLife.of(this.createdAt, this.lastFetchedAt).end();
	}

}
