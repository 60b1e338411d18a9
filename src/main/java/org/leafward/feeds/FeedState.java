package org.leafward.feeds;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a feed before its document is read.
 *
 * @param id identifier
 * @param revoked whether its address is dead
 * @param etag SHA-256 of the document in hexadecimal digits; null without a document
 * @param lastModified when the document last changed, whole seconds; null without one
 * @param lastFetchedAt when a calendar last asked, exact to an hour; null for never
 */
public record FeedState(FeedId id, boolean revoked, @Nullable String etag, @Nullable Instant lastModified,
		@Nullable Instant lastFetchedAt) {
}
