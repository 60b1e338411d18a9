package org.leafward.reminders.core;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Person;
import org.leafward.reminders.Series;

/**
 * What a message is about.
 *
 * @param person who gets it
 * @param channel code of the channel
 * @param series what it belongs to
 * @param items what is due now, in any order; may be empty when there is an outlook
 * @param outlook what is ahead; null outside of that series
 * @param notices advisories that go out with it, in any order
 */
public record Content(Person person, String channel, Series series, List<ReminderItem> items, @Nullable Outlook outlook,
		List<AdvisoryNotice> notices) {

	/**
	 * Without advisories.
	 * @param person who gets it
	 * @param channel code of the channel
	 * @param series what it belongs to
	 * @param items what is due now
	 * @param outlook what is ahead
	 */
	public Content(Person person, String channel, Series series, List<ReminderItem> items, @Nullable Outlook outlook) {
		this(person, channel, series, items, outlook, List.of());
	}

}
