package org.leafward.accounts.web;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Component;

/** Where a person is signed in. */
@Component
class OpenSessions {

	private final FindByIndexNameSessionRepository<? extends Session> sessions;

	OpenSessions(FindByIndexNameSessionRepository<? extends Session> sessions) {
		this.sessions = sessions;
	}

	/**
	 * A session.
	 *
	 * @param id its identifier, which opens it: never shown
	 * @param since when it began
	 * @param last when it was used
	 */
	record Open(String id, Instant since, Instant last) {
	}

	/** Newest first. */
	List<Open> of(PersonId person) {
		return this.sessions.findByPrincipalName(person.toString())
			.values()
			.stream()
			.filter((session) -> !session.isExpired())
			.map((session) -> new Open(session.getId(), session.getCreationTime(), session.getLastAccessedTime()))
			.sorted(Comparator.comparing(Open::last).reversed())
			.toList();
	}

	/** Ends all sessions of a person but one. */
	void endAll(PersonId person, @Nullable String but) {
		of(person).stream().map(Open::id).filter((id) -> !id.equals(but)).forEach(this.sessions::deleteById);
	}

}
