package org.leafward.reminders;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;

/**
 * A browser that takes messages.
 *
 * @param id identifier
 * @param person whose it is
 * @param endpoint the push service's address for this browser; whoever knows it can
 * disturb the browser, so it is shown to nobody
 * @param keys what a message is sealed with
 * @param label what its owner calls it
 * @param createdAt when it was added
 * @param lastOkAt when a push service last took something for it
 * @param failures how often in a row nothing could be handed on
 */
public record PushSubscription(UUID id, PersonId person, String endpoint, PushKeys keys, String label,
		Instant createdAt, @Nullable Instant lastOkAt, int failures) {

	/** Most browsers of one person. */
	public static final int MOST = 10;

	/** Longest label, in characters. */
	public static final int LONGEST_LABEL = 60;

	@Override
	public String toString() {
		return "PushSubscription[" + this.id + "]";
	}

}
