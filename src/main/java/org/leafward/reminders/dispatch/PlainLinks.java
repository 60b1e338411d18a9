package org.leafward.reminders.dispatch;

import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.Links;

/**
 * Addresses of pages that ask for a sign-in, for as long as there are none that don't.
 *
 * @param home this server, without a slash at the end
 */
record PlainLinks(String home) implements Links {

	@Override
	public String task(TaskId task) {
		return this.home + "/tasks/" + task;
	}

	@Override
	public String act(UUID reminder, Act act) {
		return this.home;
	}

	@Override
	public String stop(PersonId person, String channel, Series series) {
		return wishes();
	}

	@Override
	public String wishes() {
		return this.home + "/reminders";
	}

}
