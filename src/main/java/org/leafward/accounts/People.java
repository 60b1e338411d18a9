package org.leafward.accounts;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** The people who look after plants here. */
public interface People {

	/**
	 * Adds a person, or answers the one with this address.
	 * @param name 1 to 100 characters
	 * @param email an address; compared without regard to case
	 * @param zone time zone for their reminders
	 * @return the person
	 */
	Person join(String name, String email, ZoneId zone);

	Optional<Person> find(PersonId id);

	/**
	 * A page of people by name.
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	List<Person> list(int page, int size);

}
