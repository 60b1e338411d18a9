package org.leafward.reminders.words;

import java.util.Locale;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.care.TaskId;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.Links;

/** Addresses that say what they lead to. */
public final class FakeLinks implements Links {

	public static final String BASE = "https://plants.example.org";

	@Override
	public String task(TaskId task) {
		return BASE + "/tasks/" + task;
	}

	@Override
	public String act(UUID reminder, Act act) {
		return BASE + "/r/" + act.name().toLowerCase(Locale.ROOT) + "-" + reminder;
	}

	@Override
	public String stop(PersonId person, String channel, Series series) {
		return BASE + "/u/" + channel + "-" + series.code();
	}

	@Override
	public String wishes() {
		return BASE + "/reminders";
	}

	@Override
	public String home() {
		return BASE;
	}

}
