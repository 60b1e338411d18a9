package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.leafward.accounts.signin.SignedIn;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Component;

/** Begins sessions. */
@Component
class Sessions {

	private static final Logger LOG = LoggerFactory.getLogger(Sessions.class);

	private final SecurityContextRepository contexts = new HttpSessionSecurityContextRepository();

	/** Keeps who it is for the requests to come. */
	void begin(SignedIn known, HttpServletRequest request, HttpServletResponse response) {
		if (request.getSession(false) != null) {
			// A new identity never inherits an old session's id.
			request.changeSessionId();
		}
		LOG.info("{} signed in", known.getName());
		SecurityContext context = SecurityContextHolder.createEmptyContext();
		context.setAuthentication(known);
		SecurityContextHolder.setContext(context);
		this.contexts.saveContext(context, request, response);
	}

}
