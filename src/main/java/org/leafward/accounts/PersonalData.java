package org.leafward.accounts;

import java.util.List;
import java.util.Map;
import org.leafward.measure.BadInput;

/**
 * What a module keeps about people. Each module that keeps something implements it; a
 * test walks all tables and finds what was forgotten.
 */
public interface PersonalData {

	/**
	 * When it is deleted: what stands higher in the house first.
	 * @return a number; lower ones first
	 */
	int order();

	/**
	 * All that is kept about a person, secrets excepted, as tables.
	 * @param person who
	 * @return rows by name of the table, such as {@code sites}; a row's members are
	 * texts, numbers, truth values, days, times and null, in a fixed order
	 */
	Map<String, List<Map<String, Object>>> of(PersonId person);

	/**
	 * Files that a person takes along beside the tables.
	 * @param person who
	 * @return contents by file name
	 */
	default Map<String, byte[]> files(PersonId person) {
		return Map.of();
	}

	/**
	 * Brings back what somebody took along, as far as it is theirs to bring.
	 * @param person whose it becomes
	 * @param brought the rows
	 * @throws BadInput when a row can't be used; the caller then takes all of it back
	 */
	default void bring(PersonId person, Brought brought) {
	}

	/**
	 * Deletes all that is kept about a person. What has to stay for others loses the
	 * person.
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
