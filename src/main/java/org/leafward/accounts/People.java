package org.leafward.accounts;

import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;

/** The people who look after plants here. */
public interface People {

	/**
	 * Adds a person, or answers the one with this address. The address of somebody new is
	 * not confirmed.
	 * @param name 1 to 100 characters
	 * @param email an address; compared without regard to case
	 * @param zone time zone for their reminders
	 * @return the person
	 * @throws BadInput when the name or the address is none
	 */
	Person join(String name, String email, ZoneId zone);

	/**
	 * Adds a person who gives no address.
	 * @param name 1 to 100 characters
	 * @param zone time zone of their place
	 * @return the person
	 * @throws BadInput when the name is none
	 */
	Person withoutAddress(String name, ZoneId zone);

	/**
	 * The server as the owner of sites that are nobody's, {@link PersonId#SERVER}.
	 * @return always the same
	 */
	Person ofTheServer();

	/**
	 * Notes that the owner of the person's address has followed a link sent to it.
	 * @param id whose address
	 */
	void confirm(PersonId id);

	/**
	 * Gives somebody without an address one that was just confirmed.
	 * @param id who
	 * @param email the address
	 * @return whether it was free; somebody else's is left alone
	 */
	boolean giveAddress(PersonId id, String email);

	/**
	 * Changes what a person is called and when their day begins.
	 * @param id who
	 * @param name 1 to 100 characters
	 * @param zone time zone for their reminders
	 * @throws BadInput when the name is none
	 */
	void change(PersonId id, String name, ZoneId zone);

	Optional<Person> find(PersonId id);

	/**
	 * Several people.
	 * @param ids their identifiers, at most 10,000
	 * @return those who are there, by identifier
	 */
	Map<PersonId, Person> find(Collection<PersonId> ids);

	/**
	 * People in the order of their identifiers, without the server, to walk through all
	 * of them.
	 * @param after the last one of the page before; null for the first page
	 * @param size 1 to 10,000
	 * @return empty at the end
	 */
	List<Person> walk(@Nullable PersonId after, int size);

	/**
	 * Who has an address.
	 * @param email compared without regard to case
	 * @return empty when nobody has
	 */
	Optional<Person> withAddress(String email);

	/**
	 * A page of people by name, without the server.
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	List<Person> list(int page, int size);

}
