package org.leafward.accounts.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.leafward.accounts.signin.OperatorToken;
import org.leafward.accounts.signin.SignedIn;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Knows the operator by {@code Authorization: Bearer …} (RFC 6750) on the API. */
class BearerTokenFilter extends OncePerRequestFilter {

	private static final String SCHEME = "Bearer ";

	private final OperatorToken token;

	BearerTokenFilter(OperatorToken token) {
		this.token = token;
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		String header = request.getHeader(HttpHeaders.AUTHORIZATION);
		if (header != null && header.regionMatches(true, 0, SCHEME, 0, SCHEME.length())
				&& this.token.matches(header.substring(SCHEME.length()))) {
			SecurityContext context = SecurityContextHolder.createEmptyContext();
			context.setAuthentication(SignedIn.operator());
			SecurityContextHolder.setContext(context);
		}
		chain.doFilter(request, response);
	}

}
