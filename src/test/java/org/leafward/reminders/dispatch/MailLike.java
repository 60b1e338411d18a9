package org.leafward.reminders.dispatch;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;

/** A channel that reaches whom mail reaches and does what a test wants it to. */
@FunctionalInterface
interface MailLike extends Channel {

	@Override
	default String code() {
		return Wishes.MAIL;
	}

	@Override
	default String words() {
		return "E-mail";
	}

	@Override
	default Map<PersonId, String> addresses(Collection<Person> people) {
		Map<PersonId, String> addresses = new HashMap<>();
		people.forEach((person) -> person.mailbox().ifPresent((address) -> addresses.put(person.id(), address)));
		return addresses;
	}

}
