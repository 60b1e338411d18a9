package org.leafward.accounts.web;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.leafward.pages.Fragments;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.authentication.LoginUrlAuthenticationEntryPoint;

/**
 * Sends whoever is not signed in to the sign-in. A script would follow a redirect and put
 * the sign-in into the middle of a page, so a part of a page is answered in a way that
 * moves the whole one.
 */
final class SignInFirst implements AuthenticationEntryPoint {

	private final String signIn;

	private final AuthenticationEntryPoint redirect;

	SignInFirst(String signIn) {
		this.signIn = signIn;
		this.redirect = new LoginUrlAuthenticationEntryPoint(signIn);
	}

	@Override
	public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException ex)
			throws IOException, ServletException {
		if (Fragments.wanted(request, response)) {
			Fragments.leave(request, response, this.signIn);
		}
		else {
			this.redirect.commence(request, response, ex);
		}
	}

}
