package org.leafward.workdays;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.OtherMails;
import org.leafward.accounts.PersonId;
import org.leafward.workdays.store.DayMailTable;
import org.springframework.stereotype.Component;

/** Mails about workdays, for those to whom they are. */
@Component
class DayLetters implements OtherMails {

	private final DayMailTable mails;

	DayLetters(DayMailTable mails) {
		this.mails = mails;
	}

	@Override
	public List<Letter> newest(PersonId person, int most) {
		return this.mails.newest(person, most);
	}

	@Override
	public Optional<Letter> find(UUID id) {
		return this.mails.find(id);
	}

}
