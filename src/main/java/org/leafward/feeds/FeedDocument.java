package org.leafward.feeds;

import java.time.Instant;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** A document ready to send. Immutable. */
public final class FeedDocument {

	private final byte[] packed;

	private final String etag;

	private final Instant lastModified;

	/** Few clients want it; those who do often ask together. */
	private volatile byte @Nullable [] octets;

	/**
	 * Creates a document.
	 * @param packed text/calendar in UTF-8 by gzip (RFC 1952); not copied
	 * @param etag SHA-256 of the octets before they were packed, in hexadecimal digits
	 * @param lastModified when they last changed, whole seconds; rises strictly
	 */
	public FeedDocument(byte[] packed, String etag, Instant lastModified) {
		this.packed = packed;
		this.etag = etag;
		this.lastModified = lastModified;
	}

	/**
	 * Makes a document.
	 * @param octets text/calendar in UTF-8
	 * @param lastModified when they last changed, whole seconds
	 * @return packed and tagged
	 */
	public static FeedDocument of(byte[] octets, Instant lastModified) {
		return new FeedDocument(Packing.pack(octets), HexFormat.of().formatHex(FeedDocuments.sha256(octets)),
				lastModified);
	}

	public byte[] packed() {
		return this.packed;
	}

	public String etag() {
		return this.etag;
	}

	public Instant lastModified() {
		return this.lastModified;
	}

	/**
	 * The document as it was before it was packed.
	 * @return text/calendar in UTF-8; not to be changed
	 */
	public byte[] octets() {
		byte[] known = this.octets;
		if (known == null) {
			known = Packing.unpack(this.packed);
			this.octets = known;
		}
		return known;
	}

	/** Octets of memory that it takes once it was unpacked. */
	long weight() {
		return this.packed.length + Packing.unpackedLength(this.packed);
	}

}
