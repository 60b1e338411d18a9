package org.leafward.reminders.channel;

import java.util.Collection;
import java.util.Map;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;

/** A way a message can leave the house; all beans of this type are used. */
public interface Channel {

	/**
	 * Its name in rows, forms and the API; never changes.
	 * @return lower case letters
	 */
	String code();

	/**
	 * What people call it.
	 * @return a noun, for example "E-mail"
	 */
	String words();

	/**
	 * Where messages to people would go. Reads the database, never the network.
	 * @param people who
	 * @return without those who can't be reached or haven't asked for it
	 */
	Map<PersonId, String> addresses(Collection<Person> people);

	/**
	 * Hands a message on. Talks to the network, so it is never called inside a
	 * transaction; several threads may call it at once; bounded in time by the channel's
	 * own settings. Throws nothing for trouble outside.
	 * @param message the message
	 * @return what came of it
	 */
	Delivery deliver(Message message);

}
