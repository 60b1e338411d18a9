package org.leafward.reminders.channel.webhook;

import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.reminders.dispatch.Materialiser;
import org.leafward.reminders.store.WebhookRow;
import org.leafward.reminders.store.WebhookTable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/** What people may do with their webhook. Each has one at most. */
@Service
public class Webhooks {

	/** So long the former secret signs beside the new one. */
	static final Duration BOTH_SIGN = Duration.ofHours(24);

	/** Most trials within an hour. */
	static final int MOST_TRIALS = 5;

	private final WebhookTable webhooks;

	private final WebhookAttempts attempts;

	private final Materialiser materialiser;

	private final AuditLog audit;

	private final boolean plain;

	private final Clock clock;

	Webhooks(WebhookTable webhooks, WebhookAttempts attempts, Materialiser materialiser, AuditLog audit,
			@Value("${leafward.http.plain:false}") boolean plain, Clock clock) {
		this.webhooks = webhooks;
		this.attempts = attempts;
		this.materialiser = materialiser;
		this.audit = audit;
		this.plain = plain;
		this.clock = clock;
	}

	/**
	 * The webhook of a person.
	 * @param person whose
	 * @return empty when there is none
	 */
	public Optional<WebhookView> find(PersonId person) {
		return this.webhooks.find(person).map((row) -> WebhookView.of(row, this.clock.instant()));
	}

	/**
	 * Makes a webhook, or changes its address and switches it on.
	 * @param person whose
	 * @param given the address, https and at most 300 characters
	 * @return the secret when it was made, which is never shown again
	 * @throws BadInput when the address is none
	 */
	public Optional<String> set(PersonId person, @Nullable String given) {
		URI address = WebhookAddress.read(given, this.plain);
		byte[] secret = WebhookSecret.make();
		boolean made = this.webhooks.add(person, address, secret, this.clock.instant());
		if (!made) {
			this.webhooks.change(person, address);
		}
		this.materialiser.person(person);
		this.audit.note(Deed.SET_WEBHOOK, person, made ? "a new one" : "another address");
		return made ? Optional.of(WebhookSecret.shown(secret)) : Optional.empty();
	}

	/**
	 * Takes another secret. The one before it signs too, for 24 hours.
	 * @param person whose
	 * @return the secret, which is never shown again
	 * @throws NotThere when there is no webhook
	 */
	public String renewSecret(PersonId person) {
		byte[] secret = WebhookSecret.make();
		if (!this.webhooks.renew(person, secret, this.clock.instant().plus(BOTH_SIGN))) {
			throw none();
		}
		this.audit.note(Deed.SET_WEBHOOK, person, "another secret");
		return WebhookSecret.shown(secret);
	}

	/**
	 * Removes a webhook and its secret; without one nothing happens.
	 * @param person whose
	 */
	public void remove(PersonId person) {
		if (this.webhooks.remove(person)) {
			this.materialiser.person(person);
			this.audit.note(Deed.REMOVED_WEBHOOK, person, "");
		}
	}

	/**
	 * Sends a message that tries whether all is well, and waits for the answer. What is
	 * taken switches a webhook on that was off.
	 * @param person whose
	 * @return the webhook with what came of it
	 * @throws BadInput after {@value #MOST_TRIALS} trials within an hour
	 * @throws NotThere when there is no webhook
	 */
	public WebhookView trial(PersonId person) {
		WebhookRow webhook = this.webhooks.find(person).orElseThrow(Webhooks::none);
		Instant now = this.clock.instant();
		if (!this.webhooks.trial(person, now, now.minus(Duration.ofHours(1)), MOST_TRIALS)) {
			throw new BadInput("you have sent %d trials within an hour".formatted(MOST_TRIALS), "trial",
					"wait an hour for the next one");
		}
		this.attempts.attempt(webhook, UUID.randomUUID().toString(), WebhookBody.trial(now, this.attempts.page()));
		return find(person).orElseThrow(Webhooks::none);
	}

	private static NotThere none() {
		return new NotThere("You have no webhook.");
	}

}
