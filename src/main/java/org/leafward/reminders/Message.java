package org.leafward.reminders;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * One message to one person through one channel, about everything that was due together.
 *
 * @param id identifier
 * @param person who gets it
 * @param channel code of the channel
 * @param series what it belongs to
 * @param sender the From line of mails, for example
 * {@code Leafward <reminders@example.org>}
 * @param recipient the address, in the channel's form
 * @param recipientName the name beside the address
 * @param words what it says
 * @param thread a Message-ID that stands for what it is about, with its angle brackets;
 * null when it stands alone
 * @param messageId the Message-ID with its angle brackets; never changes, so that a
 * message sent twice can be seen to be the same
 * @param state where it stands
 * @param createdAt when it was first made; the Date line of a mail
 * @param sentAt when the other side took it
 * @param serverReply why the last try failed
 * @param uncertain how often it was handed on without word of what came of it
 */
public record Message(UUID id, PersonId person, String channel, Series series, String sender, String recipient,
		String recipientName, MessageText words, @Nullable String thread, String messageId, MessageState state,
		Instant createdAt, @Nullable Instant sentAt, @Nullable String serverReply, int uncertain) {

	public String subject() {
		return this.words.subject();
	}

	public String text() {
		return this.words.text();
	}

	public String html() {
		return this.words.html();
	}

}
