package org.leafward.reminders;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonSpeech;
import org.leafward.language.Speech;
import org.leafward.reminders.store.WishesTable;
import org.springframework.stereotype.Component;

/** Mails of other modules are in the words that people chose for their reminders. */
@Component
class ChosenSpeech implements PersonSpeech {

	private final WishesTable wishes;

	ChosenSpeech(WishesTable wishes) {
		this.wishes = wishes;
	}

	@Override
	public Map<PersonId, Speech> of(Collection<PersonId> people) {
		Map<PersonId, Speech> all = new LinkedHashMap<>();
		this.wishes.of(people).forEach((person, wish) -> all.put(person, wish.speech()));
		return all;
	}

}
