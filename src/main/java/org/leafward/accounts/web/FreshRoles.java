package org.leafward.accounts.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.util.Optional;
import org.leafward.accounts.signin.Arrivals;
import org.leafward.accounts.signin.SignedIn;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Reads the roles of whoever is signed in for each request, so that a role which is taken
 * back ends at once on all nodes, and ends the session of those who are gone.
 */
final class FreshRoles extends OncePerRequestFilter {

	private final Arrivals arrivals;

	FreshRoles(Arrivals arrivals) {
		this.arrivals = arrivals;
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		if (SecurityContextHolder.getContext().getAuthentication() instanceof SignedIn known) {
			Optional<SignedIn> now = this.arrivals.now(known);
			// A context of this request's own: the session keeps the one it has.
			SecurityContext context = SecurityContextHolder.createEmptyContext();
			now.ifPresent(context::setAuthentication);
			SecurityContextHolder.setContext(context);
			HttpSession session = request.getSession(false);
			if (now.isEmpty() && session != null) {
				session.invalidate();
			}
		}
		chain.doFilter(request, response);
	}

}
