package org.leafward.reminders.channel.webhook;

import java.io.IOException;
import java.net.ConnectException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.net.http.HttpTimeoutException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.net.ssl.SSLException;
import org.leafward.reminders.store.WebhookRow;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.client.ClientHttpResponse;
import org.springframework.stereotype.Component;
import org.springframework.web.client.RestClient;
import org.springframework.web.client.RestClientException;

/** Posts to a webhook, signed, and puts into words what came of it. */
@Component
class WebhookCall {

	private final RestClient strangers;

	private final Clock clock;

	WebhookCall(@Qualifier("strangers") RestClient.Builder strangers, Clock clock) {
		this.strangers = strangers.build();
		this.clock = clock;
	}

	/**
	 * Posts once.
	 * @param webhook where to, and what signs
	 * @param id identifier of the message, the same for each try
	 * @param body what to send
	 * @return what came of it; throws nothing for trouble outside
	 */
	WebhookAnswer post(WebhookRow webhook, String id, byte[] body) {
		Instant now = this.clock.instant();
		try {
			return this.strangers.post()
				.uri(webhook.address())
				.contentType(MediaType.APPLICATION_JSON)
				.header("webhook-id", id)
				.header("webhook-timestamp", Long.toString(now.getEpochSecond()))
				.header("webhook-signature", signatures(webhook, id, now, body))
				.body(body)
				.exchangeForRequiredValue((request, response) -> answer(response, now));
		}
		catch (RestClientException ex) {
			// Its message holds the address, and perhaps a secret in it.
			return WebhookAnswer.silent(words(ex));
		}
	}

	/** The newest first. */
	private static String signatures(WebhookRow webhook, String id, Instant now, byte[] body) {
		List<String> all = new ArrayList<>();
		all.add(WebhookSecret.sign(webhook.secret(), id, now.getEpochSecond(), body));
		byte[] former = webhook.formerSecret();
		Instant until = webhook.formerUntil();
		if (former != null && until != null && now.isBefore(until)) {
			all.add(WebhookSecret.sign(former, id, now.getEpochSecond(), body));
		}
		return String.join(" ", all);
	}

	private static WebhookAnswer answer(ClientHttpResponse response, Instant now) throws IOException {
		int status = response.getStatusCode().value();
		return new WebhookAnswer(status, words(status),
				RetryAfter.of(response.getHeaders().getFirst(HttpHeaders.RETRY_AFTER), now));
	}

	private static String words(int status) {
		return switch (status / 100) {
			case 2 -> "taken, with status %d".formatted(status);
			case 3 -> "its server sent us elsewhere with status %d, which is not followed".formatted(status);
			default -> "its server answered with status %d".formatted(status);
		};
	}

	private static String words(RestClientException trouble) {
		List<Throwable> causes = Stream.iterate((Throwable) trouble, Objects::nonNull, Throwable::getCause).toList();
		if (any(causes, UnknownHostException.class)) {
			return "no server in the public Internet has this name";
		}
		if (any(causes, HttpTimeoutException.class) || any(causes, SocketTimeoutException.class)) {
			return "its server did not answer in time";
		}
		if (any(causes, ConnectException.class)) {
			return "nobody answered at this address";
		}
		return any(causes, SSLException.class) ? "its server could not prove who it is" : "the connection broke";
	}

	private static boolean any(List<Throwable> causes, Class<? extends Throwable> type) {
		return causes.stream().anyMatch(type::isInstance);
	}

}
