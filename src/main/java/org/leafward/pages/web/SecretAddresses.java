package org.leafward.pages.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.regex.Pattern;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Marks every answer at an address that may have a secret in it, refusals and errors too:
 * nobody keeps it, and the next page doesn't learn the address. Comes before whoever may
 * refuse; the feed says itself how long it may be kept.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 40)
class SecretAddresses extends OncePerRequestFilter {

	/** Also as somebody might misspell them. */
	private static final Pattern SECRET = Pattern.compile("(?i)/+([fruw]|join|quick/+manage|sign-in/+once)([/;.%].*)?");

	@Override
	protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
			throws ServletException, IOException {
		String path = request.getRequestURI().substring(request.getContextPath().length());
		if (isSecret(path)) {
			mark(response);
		}
		chain.doFilter(request, response);
	}

	static boolean isSecret(String path) {
		return SECRET.matcher(path).matches();
	}

	/** Lets nobody keep an answer, or tell its address to the next page. */
	static void mark(HttpServletResponse response) {
		response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
		response.setHeader("Referrer-Policy", "no-referrer");
	}

}
