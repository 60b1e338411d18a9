package org.leafward.feeds.web;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.http.HttpHeaders;

/** Whether a client that asks again already has what is stored (RFC 9110 section 13). */
final class Conditions {

	/** RFC 9110 section 8.8.3: an entity tag, its opaque part in the group. */
	private static final Pattern ENTITY_TAG = Pattern.compile("(?:W/)?\"([\\x21\\x23-\\x7E\\x80-\\x{FF}]*)\"");

	private Conditions() {
	}

	/**
	 * Whether 304 is the answer. If-None-Match, a list or {@code *}, is compared weakly
	 * and beats If-Modified-Since (RFC 9110 section 13.2.2); a date that can't be read is
	 * ignored (section 13.1.3).
	 * @param request the request
	 * @param etag opaque part of the tag of what is stored
	 * @param lastModified its date, whole seconds
	 * @return true for 304
	 */
	static boolean notModified(HttpServletRequest request, String etag, Instant lastModified) {
		List<String> tags = Collections.list(request.getHeaders(HttpHeaders.IF_NONE_MATCH));
		if (!tags.isEmpty()) {
			return tags.stream().anyMatch((list) -> matches(list, etag));
		}
		String since = request.getHeader(HttpHeaders.IF_MODIFIED_SINCE);
		if (since == null) {
			return false;
		}
		HttpHeaders headers = new HttpHeaders();
		// The asctime form pads the day with a space, which the reader doesn't know.
		headers.set(HttpHeaders.IF_MODIFIED_SINCE, since.replace("  ", " 0"));
		long millis = headers.getIfModifiedSince();
		return millis != -1 && !lastModified.isAfter(Instant.ofEpochMilli(millis));
	}

	private static boolean matches(String list, String etag) {
		if (list.strip().equals("*")) {
			return true;
		}
		Matcher tags = ENTITY_TAG.matcher(list);
		while (tags.find()) {
			if (tags.group(1).equals(etag)) {
				return true;
			}
		}
		return false;
	}

	/**
	 * Whether the client takes gzip (RFC 9110 section 12.5.3).
	 * @param request the request
	 * @return false when it doesn't say so or gives it the weight 0
	 */
	static boolean takesGzip(HttpServletRequest request) {
		Boolean any = null;
		for (String header : Collections.list(request.getHeaders(HttpHeaders.ACCEPT_ENCODING))) {
			for (String offer : header.split(",")) {
				String[] parts = offer.strip().split("\\s*;\\s*", 2);
				boolean taken = parts.length == 1 || !parts[1].matches("[qQ]=0(\\.0{0,3})?");
				if (parts[0].equalsIgnoreCase("gzip") || parts[0].equalsIgnoreCase("x-gzip")) {
					return taken;
				}
				if (parts[0].equals("*")) {
					any = taken;
				}
			}
		}
		return Boolean.TRUE.equals(any);
	}

}
