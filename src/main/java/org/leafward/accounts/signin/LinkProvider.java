package org.leafward.accounts.signin;

import java.util.Optional;
import org.leafward.accounts.PersonId;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.DisabledException;
import org.springframework.security.authentication.ott.InvalidOneTimeTokenException;
import org.springframework.security.authentication.ott.OneTimeToken;
import org.springframework.security.authentication.ott.OneTimeTokenAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.stereotype.Component;

/** Makes somebody known who followed a link. */
@Component
public class LinkProvider implements AuthenticationProvider {

	private static final Logger LOG = LoggerFactory.getLogger(LinkProvider.class);

	private final OneTimeLinks links;

	private final Arrivals arrivals;

	LinkProvider(OneTimeLinks links, Arrivals arrivals) {
		this.links = links;
		this.arrivals = arrivals;
	}

	@Override
	public Authentication authenticate(Authentication authentication) {
		OneTimeToken token = this.links.consume((OneTimeTokenAuthenticationToken) authentication);
		if (!(token instanceof OneTimeLinks.Taken taken)) {
			throw new InvalidOneTimeTokenException("the link was used, has ended or is none");
		}
		PersonId adds = taken.link().person();
		Optional<SignedIn> known = (adds != null) ? this.arrivals.add(adds, taken.getUsername())
				: this.arrivals.arrive(taken.getUsername(), null);
		known.ifPresent((one) -> LOG.info("{} signed in", one.getName()));
		return known.orElseThrow(() -> new DisabledException("nobody new may join here"));
	}

	@Override
	public boolean supports(Class<?> authentication) {
		return OneTimeTokenAuthenticationToken.class.isAssignableFrom(authentication);
	}

}
