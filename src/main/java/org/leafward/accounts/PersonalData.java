package org.leafward.accounts;

import java.util.Map;

/**
 * What a module keeps about people. Each module that keeps something implements it; a
 * test walks all tables and finds what was forgotten.
 */
public interface PersonalData {

	/**
	 * Name of the part, as it stands in the export.
	 * @return for example "reminders"
	 */
	String part();

	/**
	 * When it is deleted: higher parts of the house first.
	 * @return a number; lower ones first
	 */
	int order();

	/**
	 * All that is kept about a person, secrets excepted.
	 * @param person who
	 * @return members that JSON can carry, in a fixed order
	 */
	Map<String, Object> of(PersonId person);

	/**
	 * Deletes all that is kept about a person.
	 * @param person who
	 */
	void forget(PersonId person);

	/**
	 * Gives what a person has to another one, who is the same in truth: somebody adds to
	 * a quick calendar an address that is known already.
	 * @param from who has it
	 * @param into who gets it
	 */
	void handOver(PersonId from, PersonId into);

}
