package org.leafward.feeds;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an address before its document is read.
 *
 * @param key SHA-256 of its token
 * @param form in which form it was asked for
 * @param revoked whether it is dead
 * @param expired whether it is dead because nobody used it
 * @param etag SHA-256 of the document in hexadecimal digits; null without a document
 * @param lastModified when the document last changed, whole seconds; null without one
 */
public record FeedState(byte[] key, FeedForm form, boolean revoked, boolean expired, @Nullable String etag,
		@Nullable Instant lastModified) {
}
