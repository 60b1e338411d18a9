package org.leafward.feeds;

import java.time.Instant;

/**
 * A document ready to send.
 *
 * @param packed text/calendar in UTF-8 by gzip (RFC 1952)
 * @param etag SHA-256 of the octets before they were packed, in hexadecimal digits
 * @param lastModified when they last changed, whole seconds; rises strictly
 */
public record FeedDocument(byte[] packed, String etag, Instant lastModified) {

	/**
	 * The document as it was before it was packed.
	 * @return text/calendar in UTF-8
	 */
	public byte[] octets() {
		return Packing.unpack(this.packed);
	}

}
