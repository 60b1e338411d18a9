package org.leafward.accounts.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.signin.Arrivals;
import org.leafward.accounts.signin.SignedIn;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Reads the roles of whoever is signed in for each request, so that a role which is taken
 * back ends at once on all nodes, and ends the session of those who are gone, and of
 * those who signed in too long ago.
 */
final class FreshRoles extends OncePerRequestFilter {

	private final Arrivals arrivals;

	private final Clock clock;

	private final Duration longest;

	FreshRoles(Arrivals arrivals, Clock clock, Duration longest) {
		this.arrivals = arrivals;
		this.clock = clock;
		this.longest = longest;
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		if (SecurityContextHolder.getContext().getAuthentication() instanceof SignedIn known) {
			HttpSession session = request.getSession(false);
			Optional<SignedIn> now = tooOld(session) ? Optional.empty() : this.arrivals.now(known);
			// A context of this request's own: the session keeps the one it has.
			SecurityContext context = SecurityContextHolder.createEmptyContext();
			now.ifPresent(context::setAuthentication);
			SecurityContextHolder.setContext(context);
			if (now.isEmpty() && session != null) {
				session.invalidate();
			}
		}
		chain.doFilter(request, response);
	}

	private boolean tooOld(@Nullable HttpSession session) {
		return session != null
				&& Instant.ofEpochMilli(session.getCreationTime()).plus(this.longest).isBefore(this.clock.instant());
	}

}
