package org.leafward.feeds;

import java.time.Instant;

/**
 * A document ready to send.
 *
 * @param octets text/calendar in UTF-8
 * @param packed the same by gzip (RFC 1952)
 * @param etag SHA-256 of {@code octets} in hexadecimal digits
 * @param lastModified when {@code octets} last changed, whole seconds; rises strictly
 */
public record FeedDocument(byte[] octets, byte[] packed, String etag, Instant lastModified) {
}
