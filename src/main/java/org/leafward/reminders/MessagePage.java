package org.leafward.reminders;

import java.util.List;

/**
 * A page of the outbox.
 *
 * @param mails newest first
 * @param page number of the page, from 0
 * @param more whether there are older ones
 */
public record MessagePage(List<Message> mails, int page, boolean more) {

	public MessagePage {
		mails = List.copyOf(mails);
	}

}
