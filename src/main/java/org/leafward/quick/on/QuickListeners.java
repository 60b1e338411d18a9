package org.leafward.quick.on;

import org.leafward.feeds.FeedExpired;
import org.leafward.feeds.FeedId;
import org.leafward.quick.QuickCalendars;
import org.springframework.modulith.events.ApplicationModuleListener;
import org.springframework.stereotype.Component;

/** Deletes what nobody can reach any more. */
@Component
class QuickListeners {

	private final QuickCalendars calendars;

	QuickListeners(QuickCalendars calendars) {
		this.calendars = calendars;
	}

	@ApplicationModuleListener(id = "quick.feed-expired")
	void on(FeedExpired event) {
		this.calendars.ended(new FeedId(event.feed()));
	}

}
