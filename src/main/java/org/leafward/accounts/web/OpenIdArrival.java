package org.leafward.accounts.web;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.leafward.accounts.signin.Arrivals;
import org.leafward.accounts.signin.SignedIn;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.stereotype.Component;

/**
 * Makes a person of somebody who comes from an OpenID provider: the one with the address
 * that the provider says it has verified (OpenID Connect Core 1.0, section 5.1,
 * {@code email_verified}). An address that it only has on record could be anybody's.
 */
@Component
class OpenIdArrival implements AuthenticationSuccessHandler {

	private final Arrivals arrivals;

	private final Sessions sessions;

	private final SavedRequestAwareAuthenticationSuccessHandler onward = new SavedRequestAwareAuthenticationSuccessHandler();

	OpenIdArrival(Arrivals arrivals, Sessions sessions) {
		this.arrivals = arrivals;
		this.sessions = sessions;
		this.onward.setRequestCache(WantedPage.KEPT);
	}

	@Override
	public void onAuthenticationSuccess(HttpServletRequest request, HttpServletResponse response,
			Authentication authentication) throws IOException, ServletException {
		Optional<SignedIn> known = (authentication.getPrincipal() instanceof OidcUser user) ? arrive(user)
				: Optional.empty();
		if (known.isEmpty()) {
			SecurityContextHolder.clearContext();
			request.getSession().invalidate();
			response.sendRedirect(request.getContextPath() + "/sign-in?failed");
			return;
		}
		this.sessions.begin(known.get(), request, response);
		this.onward.onAuthenticationSuccess(request, response, known.get());
	}

	private Optional<SignedIn> arrive(OidcUser user) {
		String email = user.getEmail();
		return (email != null && Boolean.TRUE.equals(user.getEmailVerified()))
				? this.arrivals.arrive(email, user.getFullName()) : Optional.empty();
	}

}
