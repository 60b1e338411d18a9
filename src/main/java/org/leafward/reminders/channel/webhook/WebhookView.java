package org.leafward.reminders.channel.webhook;

import java.net.URI;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.leafward.reminders.store.WebhookRow;

/**
 * A webhook as its owner sees it, without its secret.
 *
 * @param address where messages go
 * @param createdAt when it was made
 * @param formerUntil until when the former secret signs too; null when there is none
 * @param disabledAt since when it is off; null while it is on
 * @param disabledBecause why it is off
 * @param lastOkAt when something was last taken
 * @param lastTriedAt when something was last sent
 * @param lastOutcome what came of that, in words
 */
public record WebhookView(URI address, Instant createdAt, @Nullable Instant formerUntil, @Nullable Instant disabledAt,
		@Nullable String disabledBecause, @Nullable Instant lastOkAt, @Nullable Instant lastTriedAt,
		@Nullable String lastOutcome) {

	static WebhookView of(WebhookRow row, Instant now) {
		Instant until = row.formerUntil();
		return new WebhookView(row.address(), row.createdAt(), (until != null && now.isBefore(until)) ? until : null,
				row.disabledAt(), row.disabledBecause(), row.lastOkAt(), row.lastTriedAt(), row.lastOutcome());
	}

	public boolean on() {
		return this.disabledAt == null;
	}

}
