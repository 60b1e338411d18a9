package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.security.web.savedrequest.RequestCache;
import org.springframework.security.web.savedrequest.SavedRequest;
import org.springframework.security.web.savedrequest.SimpleSavedRequest;

/**
 * Remembers which page a stranger wanted to see, until they are signed in. Spring
 * Security's own cache keeps the whole request in the session, and so in the database,
 * with all headers and the query: a token that was sent to a page, a link that was
 * misspelt. This one keeps a path, and only one that consists of words and identifiers.
 */
final class WantedPage implements RequestCache {

	/** It has no state. */
	static final RequestCache KEPT = new WantedPage();

	private static final String NAME = WantedPage.class.getName();

	/** Words, UUIDs and identifiers of stations; no secret is made of such parts. */
	private static final Pattern PLAIN = Pattern.compile(
			"/|(/([a-z]{1,20}(-([a-z]{1,20}|[0-9]{1,4}))*|[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}|[A-Z0-9]{1,11}))+");

	private WantedPage() {
	}

	@Override
	public void saveRequest(HttpServletRequest request, HttpServletResponse response) {
		String path = request.getRequestURI().substring(request.getContextPath().length());
		if (request.getMethod().equals("GET") && PLAIN.matcher(path).matches()) {
			request.getSession().setAttribute(NAME, path);
		}
	}

	@Override
	public @Nullable SavedRequest getRequest(HttpServletRequest request, HttpServletResponse response) {
		HttpSession session = request.getSession(false);
		return (session != null && session.getAttribute(NAME) instanceof String path) ? new SimpleSavedRequest(path)
				: null;
	}

	/** A page is asked for anew; nothing of the former request comes back. */
	@Override
	public @Nullable HttpServletRequest getMatchingRequest(HttpServletRequest request, HttpServletResponse response) {
		return null;
	}

	@Override
	public void removeRequest(HttpServletRequest request, HttpServletResponse response) {
		HttpSession session = request.getSession(false);
		if (session != null) {
			session.removeAttribute(NAME);
		}
	}

}
