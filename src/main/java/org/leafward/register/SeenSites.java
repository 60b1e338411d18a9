package org.leafward.register;

import java.io.Serializable;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.TreeSet;
import java.util.UUID;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;

/**
 * Notes who looked at somebody else's site: the first look of a session on a day (UTC).
 */
@Component
class SeenSites {

	private static final String ATTRIBUTE = "leafward.seen-sites";

	private final AuditLog audit;

	private final People people;

	private final Clock clock;

	SeenSites(AuditLog audit, People people, Clock clock) {
		this.audit = audit;
		this.people = people;
		this.clock = clock;
	}

	/**
	 * The sites that were looked at.
	 *
	 * @param day on which
	 * @param sites their identifiers
	 */
	private record Seen(LocalDate day, TreeSet<UUID> sites) implements Serializable {
	}

	void note(Site site) {
		RequestAttributes session = RequestContextHolder.currentRequestAttributes();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		TreeSet<UUID> sites = (session.getAttribute(ATTRIBUTE, RequestAttributes.SCOPE_SESSION) instanceof Seen before
				&& before.day().equals(today)) ? new TreeSet<>(before.sites()) : new TreeSet<>();
		if (sites.add(site.id().value())) {
			this.audit.note(Deed.SAW_SITE, site.owner(),
					site.county().isBlank() ? "site without a county" : "site in " + site.county());
			// Set anew, or the session's store doesn't see that it changed.
			session.setAttribute(ATTRIBUTE, new Seen(today, sites), RequestAttributes.SCOPE_SESSION);
		}
	}

	/** No more of a name than that, and no part of an address that stands for one. */
	String firstName(PersonId id) {
		return this.people.find(id).map(Person::name).map((name) -> name.split("[\\s.@_+0-9]", 2)[0]).orElse("");
	}

}
