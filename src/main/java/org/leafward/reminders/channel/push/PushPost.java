package org.leafward.reminders.channel.push;

import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.leafward.reminders.PushSubscription;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.core.PushEndpoint;
import org.leafward.reminders.store.ServerKeyTable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.web.client.ResourceAccessException;
import org.springframework.web.client.RestClient;

/** Hands one message for one browser to its push service. */
class PushPost {

	private static final String KEY = "push";

	private static final int LONGEST_REASON = 200;

	private final RestClient http;

	private final ServerKeyTable keys;

	private final String contact;

	private final Clock clock;

	private volatile @Nullable ServerIdentity identity;

	/**
	 * Creates the client.
	 * @param http calls strangers' addresses within bounds
	 * @param keys where the server's keys are kept
	 * @param contact whom a push service may write to, a mailto or https address
	 * @param clock what time it is
	 */
	PushPost(RestClient http, ServerKeyTable keys, String contact, Clock clock) {
		this.http = http;
		this.keys = keys;
		this.contact = contact;
		this.clock = clock;
	}

	/** Who we are; reads the database once. */
	ServerIdentity identity() {
		ServerIdentity known = this.identity;
		if (known == null) {
			known = ServerIdentity.of(this.keys.of(KEY, ServerIdentity::make), this.contact);
			this.identity = known;
		}
		return known;
	}

	/**
	 * Sends a note.
	 * @param to the browser
	 * @param note what to say
	 * @return what the push service said
	 */
	PushAnswer send(PushSubscription to, PushNote note) {
		PushEndpoint endpoint = new PushEndpoint(URI.create(to.endpoint()));
		Instant now = this.clock.instant();
		try {
			return this.http.post()
				.uri(endpoint.address())
				.header(HttpHeaders.AUTHORIZATION, identity().authorization(endpoint, now))
				.header("TTL", Long.toString(note.secondsLeft(now)))
				.header("Urgency", note.urgent() ? "high" : "normal")
				.header("Topic", note.tag())
				.header(HttpHeaders.CONTENT_ENCODING, Sealing.CODING)
				.contentType(MediaType.APPLICATION_OCTET_STREAM)
				.body(Sealing.seal(to.keys(), note.octets()))
				.exchange((request, response) -> PushAnswer.of(response.getStatusCode().value(), endpoint.host()));
		}
		catch (ResourceAccessException ex) {
			return PushAnswer.none(endpoint.host(), words(ex));
		}
	}

	/** The whole message would name the endpoint. */
	private static String words(ResourceAccessException trouble) {
		Throwable cause = trouble.getMostSpecificCause();
		String said = cause.getMessage();
		return OneLine.of((said == null || said.contains("://")) ? cause.getClass().getSimpleName() : said,
				LONGEST_REASON);
	}

}
