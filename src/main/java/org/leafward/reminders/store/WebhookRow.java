package org.leafward.reminders.store;

import java.net.URI;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * The webhook of a person, with what signs for it.
 *
 * @param person whose
 * @param address where messages go; may hold a secret of the other server
 * @param secret what signs, 32 octets
 * @param formerSecret what signed before; null when there is none
 * @param formerUntil until when that one signs too
 * @param createdAt when it was made
 * @param disabledAt since when it is off; null while it is on
 * @param disabledBecause why it is off
 * @param lastOkAt when something was last taken
 * @param lastTriedAt when something was last sent
 * @param lastOutcome what came of that, in words
 * @param notBefore until when its server asked to be left alone
 */
public record WebhookRow(PersonId person, URI address, byte[] secret, byte @Nullable [] formerSecret,
		@Nullable Instant formerUntil, Instant createdAt, @Nullable Instant disabledAt,
		@Nullable String disabledBecause, @Nullable Instant lastOkAt, @Nullable Instant lastTriedAt,
		@Nullable String lastOutcome, @Nullable Instant notBefore) {

	/** Without secrets, since it may come into a log. */
	@Override
	public String toString() {
		return "webhook of " + this.person;
	}

}
