package org.leafward.reminders.channel.webhook;

import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.store.WebhookRow;
import org.leafward.reminders.store.WebhookTable;
import org.springframework.stereotype.Component;

/**
 * Posts messages to a server of the person's own. That one can't be reached says nothing
 * of the others, so it is trouble of this message alone.
 */
@Component
class WebhookChannel implements Channel {

	private final WebhookTable webhooks;

	private final WebhookAttempts attempts;

	private final Clock clock;

	WebhookChannel(WebhookTable webhooks, WebhookAttempts attempts, Clock clock) {
		this.webhooks = webhooks;
		this.attempts = attempts;
		this.clock = clock;
	}

	@Override
	public String code() {
		return "webhook";
	}

	@Override
	public String words() {
		return "Webhook";
	}

	/** The server only: the rest of an address may be a secret, and messages are kept. */
	@Override
	public Map<PersonId, String> addresses(Collection<Person> people) {
		Map<PersonId, String> servers = new HashMap<>();
		this.webhooks.enabled(people.stream().map(Person::id).toList())
			.forEach((person, address) -> servers.put(person, WebhookAddress.server(address)));
		return servers;
	}

	@Override
	public Delivery deliver(Message message) {
		Optional<WebhookRow> found = this.webhooks.find(message.person()).filter((one) -> one.disabledAt() == null);
		if (found.isEmpty()) {
			return new Delivery(Outcome.REFUSED, "the webhook was removed or is off");
		}
		WebhookRow webhook = found.get();
		Instant notBefore = webhook.notBefore();
		if (notBefore != null && this.clock.instant().isBefore(notBefore)) {
			return new Delivery(Outcome.LATER, "its server asked to be left alone until " + notBefore);
		}
		WebhookAnswer answer = this.attempts.attempt(webhook, message.id().toString(), WebhookBody.of(message));
		if (answer.taken()) {
			return Delivery.of(Outcome.TAKEN);
		}
		return new Delivery(answer.gone() ? Outcome.REFUSED : Outcome.LATER, answer.words());
	}

}
