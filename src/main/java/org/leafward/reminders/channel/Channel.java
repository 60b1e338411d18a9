package org.leafward.reminders.channel;

import org.leafward.reminders.Mail;

/** A way a mail can leave the house. */
public interface Channel {

	/**
	 * Hands a mail on. Talks to the network, so it is never called inside a transaction;
	 * bounded in time by the channel's own settings. Throws nothing for trouble outside.
	 * @param mail the mail
	 * @return what came of it
	 */
	Delivery deliver(Mail mail);

}
