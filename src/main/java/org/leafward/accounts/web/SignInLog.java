package org.leafward.accounts.web;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.event.EventListener;
import org.springframework.security.authentication.event.AbstractAuthenticationFailureEvent;
import org.springframework.security.authentication.event.InteractiveAuthenticationSuccessEvent;
import org.springframework.stereotype.Component;

/**
 * Writes into the server's log who came in and that somebody did not, without addresses.
 */
@Component
class SignInLog {

	private static final Logger LOG = LoggerFactory.getLogger(SignInLog.class);

	@EventListener
	void in(InteractiveAuthenticationSuccessEvent event) {
		LOG.info("{} signed in", event.getAuthentication().getName());
	}

	@EventListener
	void refused(AbstractAuthenticationFailureEvent event) {
		LOG.info("a sign-in was refused: {}", event.getException().getClass().getSimpleName());
	}

}
