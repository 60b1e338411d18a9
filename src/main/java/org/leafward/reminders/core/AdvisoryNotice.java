package org.leafward.reminders.core;

import java.util.UUID;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;

/**
 * An advisory in a message.
 *
 * @param reminder the reminder it comes from
 * @param advisory the advisory as its latest message says it
 * @param news what of it is new to the reader
 */
public record AdvisoryNotice(UUID reminder, Advisory advisory, News news) {

	/** What is new to a reader. */
	public enum News {

		/** They hear of it for the first time. */
		NEW,

		/** They were told of it, and it says something else now. */
		CHANGED,

		/** They were told of it, and it was called off. */
		OFF

	}

	/**
	 * Whether it asks for nothing any more.
	 * @return true when it was called off
	 */
	boolean off() {
		return this.news == News.OFF || this.advisory.state() == AdvisoryState.CANCELLED;
	}

}
