package org.leafward.accounts.web;

import java.util.Set;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.signin.SignedIn;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** Knows the viewer from the security context of the request. */
@Component
class SessionViewers implements Viewers {

	private final boolean demo;

	SessionViewers(Environment environment) {
		this.demo = environment.acceptsProfiles(Profiles.of("demo"));
	}

	@Override
	public Viewer current() {
		if (SecurityContextHolder.getContext().getAuthentication() instanceof SignedIn known) {
			PersonId person = known.person();
			return new Viewer((person != null) ? person.value() : null, known.called(), known.mayDoEverything(),
					this.demo, known.mayChangeRules(), known.counties(), known.coordinates());
		}
		return new Viewer(null, "", false, this.demo, false, Set.of(), false);
	}

}
