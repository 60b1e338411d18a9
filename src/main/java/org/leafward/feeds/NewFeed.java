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
	 * An address below the server's own.
	 * @param form as entries or as to-dos
	 * @return begins with a slash, ends with {@code .ics}
	 */
	public String path(FeedForm form) {
		return "/f/" + this.token + "/" + form.file();
	}

	/** Keeps the secret out of logs. */
	@Override
	public String toString() {
		return "NewFeed[id=" + this.id + "]";
	}

}
