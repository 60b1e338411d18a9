package org.leafward.reminders;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * One mail to one person, about every task whose reminder was due at the time.
 *
 * @param id identifier
 * @param person who gets it
 * @param sender the From line, for example {@code Leafward <reminders@example.org>}
 * @param recipient the address
 * @param recipientName the name beside the address
 * @param subject one line
 * @param text the plain text part
 * @param html the HTML part, with the same content
 * @param messageId the Message-ID with its angle brackets; never changes, so that a mail
 * sent twice can be seen to be the same
 * @param state where it stands
 * @param createdAt when it was first made; its Date line
 * @param sentAt when a mail server took it
 * @param serverReply why the last try failed
 */
public record Mail(UUID id, PersonId person, String sender, String recipient, String recipientName, String subject,
		String text, String html, String messageId, MailState state, Instant createdAt, @Nullable Instant sentAt,
		@Nullable String serverReply) {
}
