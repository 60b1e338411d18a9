package org.leafward.feeds;

/**
 * A feed just made. This is the only time its token can be seen; only a hash is kept.
 *
 * @param id identifier
 * @param token the secret part of its address, 32 characters of base64url (RFC 4648
 * section 5)
 */
public record NewFeed(FeedId id, String token) {

	/**
	 * The address below the server's own.
	 * @return begins with a slash, ends with {@code .ics}
	 */
	public String path() {
		return "/f/" + this.token + "/tasks.ics";
	}

	/** Keeps the secret out of logs. */
	@Override
	public String toString() {
		return "NewFeed[id=" + this.id + "]";
	}

}
