package org.leafward.feeds.web;

import java.time.Instant;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.feeds.FeedInfo;

/**
 * A feed as JSON.
 *
 * @param id identifier
 * @param kind whose tasks it holds
 * @param options what it holds and how it speaks
 * @param createdAt when it was made
 * @param revokedAt since when its address is dead
 * @param lastFetchedAt when a calendar last asked for it, exact to an hour
 */
record FeedView(UUID id, String kind, OptionsForm options, Instant createdAt, @Nullable Instant revokedAt,
		@Nullable Instant lastFetchedAt) {

	static FeedView of(FeedInfo feed) {
		return new FeedView(feed.id().value(), feed.kind().name().toLowerCase(Locale.ROOT),
				OptionsForm.of(feed.options()), feed.createdAt(), feed.revokedAt(), feed.lastFetchedAt());
	}

}
