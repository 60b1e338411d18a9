package org.leafward.accounts.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.leafward.accounts.signin.OperatorToken;
import org.leafward.accounts.signin.PersonalTokens;
import org.leafward.accounts.signin.SignedIn;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Knows the operator and people's programs by {@code Authorization: Bearer …} (RFC 6750,
 * section 2.1) on the API. The other two ways to send a token, in a form or in the
 * address, are not taken: addresses get about.
 */
class BearerTokenFilter extends OncePerRequestFilter {

	private static final String SCHEME = "Bearer ";

	private final OperatorToken operator;

	private final PersonalTokens tokens;

	BearerTokenFilter(OperatorToken operator, PersonalTokens tokens) {
		this.operator = operator;
		this.tokens = tokens;
	}

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		List<String> headers = Collections.list(request.getHeaders(HttpHeaders.AUTHORIZATION));
		if (headers.size() > 1) {
			request.setAttribute(ApiRefusals.PROBLEM, ApiRefusals.Problem.INVALID_REQUEST);
		}
		else if (headers.size() == 1 && headers.get(0).regionMatches(true, 0, SCHEME, 0, SCHEME.length())) {
			Optional<SignedIn> known = known(headers.get(0).substring(SCHEME.length()).strip());
			known.ifPresentOrElse(BearerTokenFilter::let,
					() -> request.setAttribute(ApiRefusals.PROBLEM, ApiRefusals.Problem.INVALID_TOKEN));
		}
		chain.doFilter(request, response);
	}

	private Optional<SignedIn> known(String token) {
		return this.operator.matches(token) ? Optional.of(SignedIn.operator()) : this.tokens.user(token);
	}

	private static void let(SignedIn known) {
		SecurityContext context = SecurityContextHolder.createEmptyContext();
		context.setAuthentication(known);
		SecurityContextHolder.setContext(context);
	}

}
