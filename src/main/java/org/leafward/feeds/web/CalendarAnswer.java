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
import org.leafward.feeds.FeedDocument;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.modulith.NamedInterface;

/**
 * Answers with a stored calendar, or in words.
 * <p>
 * The document is sent in the form the client takes. The plain form has the strong tag
 * {@code "x"}, the packed one the weak tag {@code W/"x"} of the same opaque part: a
 * strong tag must differ between codings (RFC 9110 section 8.8.3.3), and by weak
 * comparison a client keeps its copy when a proxy changes the coding. Both keep the
 * server's own compression away: text/calendar is not among the types it packs.
 */
@NamedInterface("http")
public final class CalendarAnswer {

	static final String CONTENT_TYPE = "text/calendar; charset=utf-8";

	/** IMF-fixdate, RFC 9110 section 5.6.7; the JDK's RFC 1123 form drops a zero. */
	private static final DateTimeFormatter HTTP_DATE = DateTimeFormatter
		.ofPattern("EEE, dd MMM yyyy HH:mm:ss 'GMT'", Locale.US)
		.withZone(ZoneOffset.UTC);

	private final Clock clock;

	private final String caching;

	/**
	 * Creates the answers of one kind of calendars.
	 * @param clock tells the time
	 * @param caching their Cache-Control
	 */
	public CalendarAnswer(Clock clock, String caching) {
		this.clock = clock;
		this.caching = caching;
	}

	/**
	 * Answers 304 where the client has what is stored.
	 * @param request the request
	 * @param response the response
	 * @param etag opaque part of the tag of what is stored
	 * @param lastModified its date, whole seconds
	 * @return false when the document has to be sent, and nothing was done
	 */
	public boolean unchanged(HttpServletRequest request, HttpServletResponse response, String etag,
			Instant lastModified) {
		if (!Conditions.notModified(request, etag, lastModified)) {
			return false;
		}
		validators(response, etag, lastModified, Conditions.takesGzip(request));
		response.setStatus(HttpServletResponse.SC_NOT_MODIFIED);
		return true;
	}

	/**
	 * Sends a document.
	 * @param request the request
	 * @param response the response
	 * @param document the document
	 * @param file a name for who keeps it, such as tasks.ics
	 * @throws IOException when the client is gone
	 */
	public void send(HttpServletRequest request, HttpServletResponse response, FeedDocument document, String file)
			throws IOException {
		boolean packed = Conditions.takesGzip(request);
		validators(response, document.etag(), document.lastModified(), packed);
		response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + file + "\"");
		if (packed) {
			response.setHeader(HttpHeaders.CONTENT_ENCODING, "gzip");
		}
		send(request, response, CONTENT_TYPE, packed ? document.packed() : document.octets());
	}

	private void validators(HttpServletResponse response, String etag, Instant lastModified, boolean packed) {
		// A change within the same second is dated one second ahead; RFC 9110 section
		// 8.8.2.1 allows no date later than now, and an earlier one only costs a
		// transfer.
		Instant now = this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
		response.setHeader(HttpHeaders.ETAG, (packed ? "W/\"" : "\"") + etag + "\"");
		response.setHeader(HttpHeaders.LAST_MODIFIED, HTTP_DATE.format(lastModified.isAfter(now) ? now : lastModified));
		response.setHeader(HttpHeaders.CACHE_CONTROL, this.caching);
		response.setHeader(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING);
	}

	/**
	 * Answers in words; nobody may keep them.
	 * @param request the request
	 * @param response the response
	 * @param status what kind of answer it is
	 * @param words plain text
	 * @throws IOException when the client is gone
	 */
	public static void refuse(HttpServletRequest request, HttpServletResponse response, int status, String words)
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
