package org.leafward.feeds.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import org.leafward.feeds.FeedDocument;
import org.leafward.feeds.FeedDocuments;
import org.leafward.feeds.FeedForm;
import org.leafward.feeds.FeedState;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestMethod;

/**
 * The address that calendars subscribe to. It answers with the stored octets whatever the
 * client accepts, never redirects, never asks for a sign-in and sets no cookie.
 * <p>
 * The document is stored twice, plain and by gzip, and sent in the form the client takes.
 * The plain form has the strong tag {@code "x"}, the packed one the weak tag
 * {@code W/"x"} of the same opaque part: a strong tag must differ between codings (RFC
 * 9110 section 8.8.3.3), and by weak comparison a client keeps its copy when a proxy
 * changes the coding. Both keep the server's own compression away: text/calendar is not
 * among the types it packs.
 */
@Controller
class FeedHttp {

	static final String CONTENT_TYPE = "text/calendar; charset=utf-8";

	/** IMF-fixdate, RFC 9110 section 5.6.7; the JDK's RFC 1123 form drops a zero. */
	private static final DateTimeFormatter HTTP_DATE = DateTimeFormatter
		.ofPattern("EEE, dd MMM yyyy HH:mm:ss 'GMT'", Locale.US)
		.withZone(ZoneOffset.UTC);

	private final FeedDocuments documents;

	private final Clock clock;

	FeedHttp(FeedDocuments documents, Clock clock) {
		this.documents = documents;
		this.clock = clock;
	}

	@RequestMapping(path = "/f/{token}/tasks.ics", method = { RequestMethod.GET, RequestMethod.HEAD })
	void tasks(@PathVariable String token, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		calendar(token, FeedForm.EVENTS, request, response);
	}

	@RequestMapping(path = "/f/{token}/todo.ics", method = { RequestMethod.GET, RequestMethod.HEAD })
	void todos(@PathVariable String token, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		calendar(token, FeedForm.TODOS, request, response);
	}

	private void calendar(String token, FeedForm form, HttpServletRequest request, HttpServletResponse response)
			throws IOException {
		response.setHeader("X-Robots-Tag", "noindex, nofollow");
		response.setHeader("Referrer-Policy", "no-referrer");
		Optional<FeedState> found = this.documents.find(token, form);
		if (found.isEmpty()) {
			refuse(request, response, HttpServletResponse.SC_NOT_FOUND, "There is no calendar at this address.\n");
		}
		else if (found.get().revoked()) {
			refuse(request, response, HttpServletResponse.SC_GONE,
					found.get().expired() ? "This calendar ended, as no program had fetched it for 18 months.\n"
							: "This calendar address was revoked. Ask its owner for a new one.\n");
		}
		else {
			answer(found.get(), request, response);
		}
	}

	private void answer(FeedState state, HttpServletRequest request, HttpServletResponse response) throws IOException {
		boolean packed = Conditions.takesGzip(request);
		if (state.etag() != null && state.lastModified() != null
				&& Conditions.notModified(request, state.etag(), state.lastModified())) {
			validators(response, state.etag(), state.lastModified(), packed);
			response.setStatus(HttpServletResponse.SC_NOT_MODIFIED);
			return;
		}
		Optional<FeedDocument> document = this.documents.read(state);
		if (document.isEmpty()) {
			refuse(request, response, HttpServletResponse.SC_GONE, "This calendar address was revoked just now.\n");
			return;
		}
		validators(response, document.get().etag(), document.get().lastModified(), packed);
		response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + state.form().file() + "\"");
		if (packed) {
			response.setHeader(HttpHeaders.CONTENT_ENCODING, "gzip");
		}
		send(request, response, CONTENT_TYPE, packed ? document.get().packed() : document.get().octets());
	}

	private void validators(HttpServletResponse response, String etag, Instant lastModified, boolean packed) {
		// A change within the same second is dated one second ahead; RFC 9110 section
		// 8.8.2.1 allows no date later than now, and an earlier one only costs a
		// transfer.
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
		response.setHeader(HttpHeaders.ETAG, (packed ? "W/\"" : "\"") + etag + "\"");
		response.setHeader(HttpHeaders.LAST_MODIFIED, HTTP_DATE.format(lastModified.isAfter(now) ? now : lastModified));
		response.setHeader(HttpHeaders.CACHE_CONTROL, "private, max-age=900");
		response.setHeader(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING);
	}

	private static void refuse(HttpServletRequest request, HttpServletResponse response, int status, String words)
			throws IOException {
		response.setStatus(status);
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		send(request, response, "text/plain; charset=utf-8", words.getBytes(StandardCharsets.UTF_8));
	}

	private static void send(HttpServletRequest request, HttpServletResponse response, String type, byte[] octets)
			throws IOException {
		response.setContentType(type);
		response.setContentLength(octets.length);
		if (!HttpMethod.HEAD.matches(request.getMethod())) {
			response.getOutputStream().write(octets);
		}
	}

}
