package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.pages.Fragments;
import org.leafward.pages.NotForYou;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;

/**
 * Tells those who are signed in but may not see a page who may. A form without its secret
 * is refused in other words, by the error page. A part of a page that is asked for after
 * the session ended leads to the sign-in.
 */
final class Refused implements AccessDeniedHandler {

	private final String signIn;

	Refused(String signIn) {
		this.signIn = signIn;
	}

	@Override
	public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException ex)
			throws IOException {
		if (Fragments.wanted(request, response)
				&& !(SecurityContextHolder.getContext().getAuthentication() instanceof SignedIn)) {
			Fragments.leave(request, response, this.signIn);
			return;
		}
		if (!(ex instanceof CsrfException)) {
			request.setAttribute(NotForYou.ATTRIBUTE, words(request.getRequestURI()));
		}
		response.sendError(HttpStatus.FORBIDDEN.value());
	}

	private static NotForYou words(String path) {
		if (path.equals("/replanning")) {
			return new NotForYou("Only the operator may see how far the plans of all sites are worked out",
					"sign in with the operator token; the plans of your own sites are under This week and My sites");
		}
		if (path.equals("/workshop") || path.startsWith("/workshop/")) {
			return new NotForYou("Only specialists and the operator may change rules",
					"read the rules under Care rules, or sign in as somebody who may");
		}
		return new NotForYou("This page is not for whoever is signed in", "sign in as somebody who may see it");
	}

}
