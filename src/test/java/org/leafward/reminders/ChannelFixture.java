package org.leafward.reminders;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;

/** A channel that reaches some people and sends nothing. */
public record ChannelFixture(String code, String words, Set<PersonId> reached) implements Channel {

	@Override
	public Map<PersonId, String> addresses(Collection<Person> people) {
		return people.stream()
			.map(Person::id)
			.filter(this.reached::contains)
			.collect(Collectors.toMap((id) -> id, (id) -> "there"));
	}

	@Override
	public Delivery deliver(Message message) {
		throw new UnsupportedOperationException("sends nothing");
	}

}
