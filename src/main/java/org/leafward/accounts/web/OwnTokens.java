package org.leafward.accounts.web;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalToken;
import org.leafward.accounts.signin.PersonalTokens;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.springframework.stereotype.Component;

/** The tokens of whoever asks; others' are not there for them. */
@Component
class OwnTokens {

	private final PersonalTokens tokens;

	private final Viewers viewers;

	OwnTokens(PersonalTokens tokens, Viewers viewers) {
		this.tokens = tokens;
		this.viewers = viewers;
	}

	/** Who asks; null for the operator token, which acts for nobody. */
	@Nullable PersonId person() {
		UUID person = this.viewers.current().person();
		return (person != null) ? new PersonId(person) : null;
	}

	/** Their own, everybody's for the operator token. */
	List<PersonalToken> list(int page, int size) {
		return this.tokens.list(person(), page, size);
	}

	void revoke(UUID id) {
		Viewer viewer = this.viewers.current();
		this.tokens.revoke(this.tokens.find(id)
			.filter((token) -> viewer.mayOpen(token.person().value()))
			.orElseThrow(() -> new NotThere("There is no token " + id)));
	}

}
