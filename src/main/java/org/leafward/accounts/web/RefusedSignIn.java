package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;

/** Leads those whose link doesn't work back to the start. */
final class RefusedSignIn implements AuthenticationFailureHandler {

	private static final Logger LOG = LoggerFactory.getLogger(RefusedSignIn.class);

	private static final String FAILED = "/sign-in?failed";

	@Override
	public void onAuthenticationFailure(HttpServletRequest request, HttpServletResponse response,
			AuthenticationException exception) throws IOException {
		LOG.info("a sign-in was refused: {}", exception.getClass().getSimpleName());
		response.sendRedirect(request.getContextPath() + FAILED);
	}

	/** Whether an answer leads back, or refuses a token. */
	static boolean noted(HttpServletResponse response) {
		String location = response.getHeader("Location");
		return response.getStatus() == HttpStatus.UNAUTHORIZED.value()
				|| (location != null && location.contains(FAILED));
	}

}
