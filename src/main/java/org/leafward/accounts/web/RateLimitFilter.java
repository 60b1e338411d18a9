package org.leafward.accounts.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import java.util.regex.Pattern;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.accounts.web.RateLimits.Kind;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Slows down who tries too often. Strangers are told apart by their network address,
 * which is the proxy's word behind one ({@code server.forward-headers-strategy}).
 */
final class RateLimitFilter extends OncePerRequestFilter {

	/**
	 * Not the addresses of feeds: behind one network address a calendar service asks for
	 * all its people, dead addresses among them, and some programs drop a calendar that
	 * was refused once. 192 random bits need no bound on guessing.
	 */
	private static final Pattern GUESSED = Pattern.compile("/sign-in(/once)?|/quick/manage.*|/[ru]/.*");

	/**
	 * Leaving a series. A mail service does it for all its people from one network
	 * address, and one of them could get the others refused.
	 */
	private static final Pattern LEAVING = Pattern.compile("/u/.*");

	private static final Pattern TRIAL = Pattern.compile("(/api/v1)?/reminders/push/trial");

	private static final Set<String> HARMLESS = Set.of("GET", "HEAD", "OPTIONS");

	private static final int LARGE = 64 << 10;

	private final RateLimits limits;

	RateLimitFilter(RateLimits limits) {
		this.limits = limits;
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		String path = request.getRequestURI().substring(request.getContextPath().length());
		Authentication known = SecurityContextHolder.getContext().getAuthentication();
		boolean api = path.startsWith("/api/");
		String network = request.getRemoteAddr();
		boolean leaving = request.getMethod().equals("POST") && LEAVING.matcher(path).matches();
		boolean guessing = (GUESSED.matcher(path).matches() && !leaving)
				|| (api && request.getHeader(HttpHeaders.AUTHORIZATION) != null);
		long wait = guessing ? this.limits.blocked(Kind.GUESSES, network) : 0;
		if (wait == 0 && !HARMLESS.contains(request.getMethod())) {
			wait = changes(request, path, (known instanceof SignedIn) ? known.getName() : network, api,
					known instanceof SignedIn);
		}
		if (wait > 0) {
			response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(wait));
			response.sendError(HttpStatus.TOO_MANY_REQUESTS.value());
			return;
		}
		chain.doFilter(request, response);
		if (guessing && wrong(path, response)) {
			this.limits.waitFor(Kind.GUESSES, network);
		}
	}

	private long changes(HttpServletRequest request, String path, String who, boolean api, boolean known) {
		if (known && TRIAL.matcher(path).matches()) {
			return this.limits.waitFor(Kind.TRIALS, who);
		}
		if (api && known && request.getContentLengthLong() < LARGE && !request.getMethod().equals("PUT")) {
			return this.limits.waitFor(Kind.CALLS, who);
		}
		if (request.getContentLengthLong() >= LARGE || request.getMethod().equals("PUT")) {
			return this.limits.waitFor(Kind.UPLOADS, who);
		}
		return (!known && path.equals("/quick/calendar")) ? this.limits.waitFor(Kind.CREATIONS, who) : 0;
	}

	/** A secret that nobody knows; what is gone for good was known once. */
	private static boolean wrong(String path, HttpServletResponse response) {
		if (path.startsWith("/sign-in")) {
			return RefusedSignIn.noted(response);
		}
		// What isn't there is no guess of a token, only of the secret in an address.
		return response.getStatus() == (path.startsWith("/api/") ? HttpStatus.UNAUTHORIZED : HttpStatus.NOT_FOUND)
			.value();
	}

}
