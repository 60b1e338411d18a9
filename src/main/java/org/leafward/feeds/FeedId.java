package org.leafward.feeds;

import java.util.UUID;

/**
 * Identifier of a feed; not its secret.
 *
 * @param value the identifier
 */
public record FeedId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
