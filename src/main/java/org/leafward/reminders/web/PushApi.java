package org.leafward.reminders.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.reminders.PushSubscription;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.push.PushChannel;
import org.leafward.reminders.channel.push.PushSubscriptions;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Push messages as JSON, for programs that take them as a browser does. */
@RestController
@Tag(name = "Push messages", description = "Where messages are pushed to (RFC 8030)")
@RequestMapping("/api/v1/reminders/push")
class PushApi {

	private final PushSubscriptions subscriptions;

	private final PushChannel channel;

	private final Viewers viewers;

	PushApi(PushSubscriptions subscriptions, PushChannel channel, Viewers viewers) {
		this.subscriptions = subscriptions;
		this.channel = channel;
		this.viewers = viewers;
	}

	/**
	 * Where messages go.
	 *
	 * @param key the server's public key, which a subscription is made with: a point of
	 * P-256 in uncompressed form, as base64url
	 * @param subscriptions oldest first, at most ten
	 */
	record PushAnswer(String key, List<One> subscriptions) {

		/**
		 * One of them, without its endpoint.
		 *
		 * @param id identifier
		 * @param label what its owner calls it
		 * @param createdAt when it was added
		 * @param lastTakenAt when its push service last took a message
		 * @param failures how often in a row it took none
		 */
		record One(UUID id, String label, Instant createdAt, @Nullable Instant lastTakenAt, int failures) {

			static One of(PushSubscription one) {
				return new One(one.id(), one.label(), one.createdAt(), one.lastOkAt(), one.failures());
			}

		}

	}

	/**
	 * A subscription as browsers write it as JSON, with a label.
	 *
	 * @param endpoint the push service's address
	 * @param keys what messages are sealed with
	 * @param label what its owner calls it
	 */
	record PushRequest(@Nullable String endpoint, @Nullable Keys keys, @Nullable String label) {

		/**
		 * What messages are sealed with (RFC 8291).
		 *
		 * @param p256dh a public key, base64url
		 * @param auth a secret of 16 octets, base64url
		 */
		record Keys(@Nullable String p256dh, @Nullable String auth) {
		}

	}

	/**
	 * What came of a trial.
	 *
	 * @param outcome taken, later or refused
	 * @param reason for all but success
	 */
	record TrialAnswer(String outcome, @Nullable String reason) {

		static TrialAnswer of(Delivery delivery) {
			return new TrialAnswer(delivery.outcome().name().toLowerCase(Locale.ROOT), delivery.reason());
		}

	}

	@Operation(summary = "The server's key, and where messages are pushed to")
	@GetMapping
	PushAnswer list() {
		PersonId person = person();
		return new PushAnswer(this.channel.publicKey(),
				this.subscriptions.of(person).stream().map(PushAnswer.One::of).toList());
	}

	@Operation(summary = "Have messages pushed to an endpoint; beyond ten, the one that was not used for longest goes")
	@PostMapping
	@ResponseStatus(HttpStatus.CREATED)
	PushAnswer add(@RequestBody PushRequest wanted) {
		PushRequest.Keys keys = wanted.keys();
		this.subscriptions.add(person(), wanted.endpoint(), (keys != null) ? keys.p256dh() : null,
				(keys != null) ? keys.auth() : null, wanted.label());
		return list();
	}

	@Operation(summary = "Push nothing there any more")
	@DeleteMapping("/{id}")
	@ResponseStatus(HttpStatus.NO_CONTENT)
	void remove(@PathVariable UUID id) {
		this.subscriptions.remove(person(), id);
	}

	@Operation(summary = "Push a trial message, five times an hour at most")
	@PostMapping("/trial")
	TrialAnswer trial() {
		return TrialAnswer.of(this.channel.trial(person()));
	}

	private PersonId person() {
		UUID person = this.viewers.current().person();
		if (person == null) {
			throw new NotThere("The operator token acts for nobody; use a person's token.");
		}
		return new PersonId(person);
	}

}
