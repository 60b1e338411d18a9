package org.leafward.reminders.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.reminders.channel.webhook.WebhookView;
import org.leafward.reminders.channel.webhook.Webhooks;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** The own webhook as JSON. */
@RestController
@Tag(name = "Webhook", description = "A server of yours that is told what is due; signed by Standard Webhooks 1.0.0")
@RequestMapping("/api/v1/reminders/webhook")
class WebhookApi {

	private final Webhooks webhooks;

	private final Viewers viewers;

	WebhookApi(Webhooks webhooks, Viewers viewers) {
		this.webhooks = webhooks;
		this.viewers = viewers;
	}

	/**
	 * Where messages are to go.
	 *
	 * @param address https, at most 300 characters
	 */
	record Wanted(@Nullable String address) {
	}

	/**
	 * A webhook as answered, without its secret.
	 *
	 * @param address where messages go
	 * @param on whether they do
	 * @param createdAt when it was made
	 * @param offSince since when it is off; null while it is on
	 * @param offBecause why it is off
	 * @param lastTakenAt when something was last taken
	 * @param lastSentAt when something was last sent
	 * @param lastOutcome what came of that
	 * @param formerSecretUntil until when the former secret signs too
	 */
	record WebhookAnswer(String address, boolean on, Instant createdAt, @Nullable Instant offSince,
			@Nullable String offBecause, @Nullable Instant lastTakenAt, @Nullable Instant lastSentAt,
			@Nullable String lastOutcome, @Nullable Instant formerSecretUntil) {

		static WebhookAnswer of(WebhookView view) {
			return new WebhookAnswer(view.address().toString(), view.on(), view.createdAt(), view.disabledAt(),
					view.disabledBecause(), view.lastOkAt(), view.lastTriedAt(), view.lastOutcome(),
					view.formerUntil());
		}

	}

	/**
	 * A webhook that was set.
	 *
	 * @param webhook the webhook
	 * @param secret what signs; shown only now, null when it was known before
	 */
	record SetAnswer(WebhookAnswer webhook, @Nullable String secret) {
	}

	@Operation(summary = "Your webhook, with what came of the last message")
	@GetMapping
	WebhookAnswer look() {
		return found(person());
	}

	@Operation(summary = "Set where messages go; the secret is shown only in the answer that makes the webhook")
	@PutMapping
	ResponseEntity<SetAnswer> set(@RequestBody Wanted wanted) {
		PersonId person = person();
		Optional<String> secret = this.webhooks.set(person, wanted.address());
		return ResponseEntity.status(secret.isPresent() ? HttpStatus.CREATED : HttpStatus.OK)
			.body(new SetAnswer(found(person), secret.orElse(null)));
	}

	@Operation(summary = "Take another secret, shown only in this answer; the former one signs too for 24 hours")
	@PostMapping("/secret")
	SetAnswer renew() {
		PersonId person = person();
		String secret = this.webhooks.renewSecret(person);
		return new SetAnswer(found(person), secret);
	}

	@Operation(summary = "Send a trial and wait for the answer, at most 5 within an hour")
	@PostMapping("/trial")
	WebhookAnswer trial() {
		return WebhookAnswer.of(this.webhooks.trial(person()));
	}

	@Operation(summary = "Remove your webhook and its secret")
	@DeleteMapping
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void remove() {
		this.webhooks.remove(person());
	}

	private WebhookAnswer found(PersonId person) {
		return this.webhooks.find(person)
			.map(WebhookAnswer::of)
			.orElseThrow(() -> new NotThere("You have no webhook."));
	}

	private PersonId person() {
		UUID person = this.viewers.current().person();
		if (person == null) {
			throw new NotThere("A webhook is a person's own; the operator token acts for nobody.");
		}
		return new PersonId(person);
	}

}
