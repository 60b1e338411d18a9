package org.leafward.feeds;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a feed before its document is read.
 *
 * @param id identifier
 * @param revoked whether its address is dead
 * @param expired whether it is dead because nobody used it
 * @param etag SHA-256 of the document in hexadecimal digits; null without a document
 * @param lastModified when the document last changed, whole seconds; null without one
 * @param createdAt when it was made
 * @param lastFetchedAt when a calendar last asked, exact to an hour; null for never
 */
public record FeedState(FeedId id, boolean revoked, boolean expired, @Nullable String etag,
		@Nullable Instant lastModified, Instant createdAt, @Nullable Instant lastFetchedAt) {
}
