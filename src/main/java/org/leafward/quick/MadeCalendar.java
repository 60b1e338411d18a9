package org.leafward.quick;

import org.leafward.feeds.NewFeed;
import org.leafward.register.Site;

/**
 * A calendar just made. Its secrets can be seen only now.
 *
 * @param feed the feed with its token
 * @param secret what opens the page that manages it
 * @param site the place
 */
public record MadeCalendar(NewFeed feed, String secret, Site site) {

	/** Keeps the secrets out of logs. */
	@Override
	public String toString() {
		return "MadeCalendar[feed=" + this.feed.id() + "]";
	}

}
