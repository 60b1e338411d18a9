package org.leafward.climate.source;

import java.io.IOException;
import java.net.ConnectException;
import java.net.URI;
import java.net.UnknownHostException;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Set;
import javax.net.ssl.SSLException;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.client.ClientHttpResponse;
import org.springframework.stereotype.Component;
import org.springframework.web.client.ResourceAccessException;
import org.springframework.web.client.RestClient;

/** Fetches a text and turns every kind of trouble into words. */
@Component
public class Download {

	private final RestClient client;

	private final Clock clock;

	/**
	 * Creates the door to the outside.
	 * @param client a builder with bounds on time, size and reach
	 * @param clock tells how far off a date in {@code Retry-After} is
	 */
	public Download(RestClient.Builder client, Clock clock) {
		this.client = client.build();
		this.clock = clock;
	}

	/**
	 * Fetches a text.
	 * @param from its address
	 * @param accept what to ask for
	 * @param types media types that will do, without parameters, lower case
	 * @return the whole body, read as UTF-8
	 * @throws FetchFailed when there is no whole answer with status 200 and one of the
	 * types
	 */
	public String text(URI from, String accept, Set<String> types) {
		try {
			return this.client.get()
				.uri(from)
				.header(HttpHeaders.ACCEPT, accept)
				.exchangeForRequiredValue((request, response) -> read(from, response, types));
		}
		catch (ResourceAccessException ex) {
			throw new FetchFailed("%s: %s".formatted(from.getHost(), words(ex)), null, ex);
		}
	}

	private String read(URI from, ClientHttpResponse response, Set<String> types) throws IOException {
		int status = response.getStatusCode().value();
		if (status != 200) {
			throw new FetchFailed("%s answered with status %d%s".formatted(from.getHost(), status, meaning(status)),
					retryAfter(response.getHeaders().getFirst(HttpHeaders.RETRY_AFTER)), null);
		}
		String type = type(response.getHeaders().getFirst(HttpHeaders.CONTENT_TYPE));
		if (!types.contains(type)) {
			throw new FetchFailed(
					"%s answered with content type '%s', not with %s".formatted(from.getHost(), type, types));
		}
		return new String(response.getBody().readAllBytes(), StandardCharsets.UTF_8);
	}

	private static String meaning(int status) {
		return switch (status) {
			case 404 -> " (it knows nothing about this place or station)";
			case 429 -> " (it was asked too often)";
			case 503 -> " (it is out of order for now)";
			default -> "";
		};
	}

	/** Only the type and subtype; a broken header is no type at all. */
	private static String type(@Nullable String header) {
		try {
			MediaType type = MediaType.parseMediaType((header != null) ? header : "");
			return (type.getType() + "/" + type.getSubtype()).toLowerCase(Locale.ROOT);
		}
		catch (IllegalArgumentException ex) {
			return "none";
		}
	}

	/** Seconds or a date: RFC 9110, section 10.2.3. */
	private @Nullable Duration retryAfter(@Nullable String header) {
		if (header == null) {
			return null;
		}
		String text = header.strip();
		try {
			if (text.matches("\\d{1,9}")) {
				return Duration.ofSeconds(Long.parseLong(text));
			}
			Instant then = Instant.from(DateTimeFormatter.RFC_1123_DATE_TIME.parse(text));
			Duration wait = Duration.between(this.clock.instant(), then);
			return wait.isNegative() ? null : wait;
		}
		catch (DateTimeException ex) {
			return null;
		}
	}

	private static String words(ResourceAccessException ex) {
		Throwable cause = (ex.getCause() != null) ? ex.getCause() : ex;
		if (cause instanceof HttpConnectTimeoutException) {
			return "no connection in time";
		}
		if (cause instanceof HttpTimeoutException) {
			return "no whole answer in time";
		}
		if (cause instanceof UnknownHostException || cause.getCause() instanceof UnknownHostException) {
			return "there is no such server";
		}
		if (cause instanceof ConnectException) {
			return "it can't be connected to";
		}
		if (cause instanceof SSLException) {
			return "no safe connection: " + cause.getMessage();
		}
		return (cause.getMessage() != null) ? cause.getMessage() : "the connection broke";
	}

}
