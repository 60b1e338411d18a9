package org.leafward.reminders.channel.webhook;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.leafward.accounts.Letter;
import org.leafward.accounts.Letters;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.reminders.store.WebhookRow;
import org.leafward.reminders.store.WebhookTable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Calls a webhook and writes down what came of it; switches off what is dead. */
@Component
class WebhookAttempts {

	/** So long nothing may be taken before a webhook is switched off. */
	static final Duration PATIENCE = Duration.ofDays(5);

	/** A single failure before a quiet week says little. */
	static final int FAILURES = 5;

	private static final String GONE = "its server said that it wants no more messages (status 410)";

	private static final String DEAD = "its server took nothing for %d days; the last time: %s";

	private final WebhookCall call;

	private final WebhookTable webhooks;

	private final People people;

	private final ObjectProvider<Letters> letters;

	private final String baseUrl;

	private final Clock clock;

	WebhookAttempts(WebhookCall call, WebhookTable webhooks, People people, ObjectProvider<Letters> letters,
			@Value("${leafward.base-url}") String baseUrl, Clock clock) {
		this.call = call;
		this.webhooks = webhooks;
		this.people = people;
		this.letters = letters;
		this.baseUrl = baseUrl.endsWith("/") ? baseUrl.substring(0, baseUrl.length() - 1) : baseUrl;
		this.clock = clock;
	}

	/**
	 * Sends something to a webhook.
	 * @param webhook the webhook
	 * @param id identifier of the message
	 * @param body what to send
	 * @return what came of it
	 */
	WebhookAnswer attempt(WebhookRow webhook, String id, byte[] body) {
		WebhookAnswer answer = this.call.post(webhook, id, body);
		Instant now = this.clock.instant();
		if (answer.taken()) {
			this.webhooks.taken(webhook, now, answer.words());
		}
		else {
			note(webhook, answer, now);
		}
		return answer;
	}

	private void note(WebhookRow webhook, WebhookAnswer answer, Instant now) {
		Duration pause = answer.pause();
		this.webhooks.failed(webhook, now, answer.words(), (pause != null) ? now.plus(pause) : null);
		String because = answer.gone() ? GONE : DEAD.formatted(PATIENCE.toDays(), answer.words());
		boolean ended = answer.gone() ? this.webhooks.disable(webhook, now, because)
				: this.webhooks.disableIfFailing(webhook, now, now.minus(PATIENCE), FAILURES, because);
		if (ended) {
			this.people.find(webhook.person()).ifPresent((person) -> tell(person, because));
		}
	}

	private void tell(Person person, String because) {
		person.mailbox()
			.ifPresent((address) -> this.letters.stream()
				.filter(Letters::canSend)
				.findFirst()
				.ifPresent((mail) -> mail.send(new Letter(address, person.name(), "Your webhook at Leafward is off", """
						Leafward sends nothing to your webhook any more: %s.

						When its server is well again, send it a trial from this page. What is taken switches the
						webhook on:

						%s
						""".formatted(because, page())))));
	}

	/** The page on which somebody looks after their webhook. */
	String page() {
		return this.baseUrl + "/reminders/webhook";
	}

}
