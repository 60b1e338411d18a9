package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.EmailAddress;
import org.leafward.accounts.signin.LinkMail;
import org.leafward.accounts.signin.OneTimeLinks;
import org.leafward.accounts.web.RateLimits.Kind;
import org.leafward.measure.BadInput;
import org.springframework.security.authentication.ott.GenerateOneTimeTokenRequest;
import org.springframework.security.web.authentication.ott.GenerateOneTimeTokenRequestResolver;
import org.springframework.stereotype.Component;

/**
 * Reads whom a link is asked for. What can't be answered goes on to the page, which finds
 * the reason in the request.
 */
@Component
class LinkRequests implements GenerateOneTimeTokenRequestResolver {

	/** Holds a {@link BadInput}. */
	static final String WRONG = LinkRequests.class.getName() + ".wrong";

	/** Holds the seconds to wait. */
	static final String WAIT = LinkRequests.class.getName() + ".wait";

	private final RateLimits limits;

	private final LinkMail mail;

	LinkRequests(RateLimits limits, LinkMail mail) {
		this.limits = limits;
		this.mail = mail;
	}

	@Override
	public @Nullable GenerateOneTimeTokenRequest resolve(HttpServletRequest request) {
		if (!this.mail.works()) {
			return null;
		}
		try {
			String email = EmailAddress.read("email", request.getParameter("email"));
			long wait = Math.max(this.limits.waitFor(Kind.LINKS_OF_ASKER, request.getRemoteAddr()),
					this.limits.waitFor(Kind.LINKS_TO_ADDRESS, EmailAddress.key(email)));
			if (wait == 0) {
				return new GenerateOneTimeTokenRequest(email, OneTimeLinks.SIGN_IN);
			}
			request.setAttribute(WAIT, wait);
		}
		catch (BadInput ex) {
			request.setAttribute(WRONG, ex);
		}
		return null;
	}

}
