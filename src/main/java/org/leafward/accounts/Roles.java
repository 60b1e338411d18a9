package org.leafward.accounts;

import java.util.List;
import org.leafward.measure.BadInput;

/** Who may do what. */
public interface Roles {

	/**
	 * What somebody may do now.
	 * @param person who
	 * @return nothing for people who aren't there
	 */
	Granted of(PersonId person);

	/**
	 * Grants a role; granting it again changes nothing.
	 * @param person to whom
	 * @param role which
	 * @param county for specialists, whom it makes one of this county; empty for the
	 * others
	 * @throws BadInput when the county is missing, or not wanted
	 */
	void grant(PersonId person, Role role, String county);

	/**
	 * Takes a role back.
	 * @param person from whom
	 * @param role which
	 * @param county of a specialist; empty for the others
	 */
	void withdraw(PersonId person, Role role, String county);

	/**
	 * Who can be asked to help with something in a county: its specialists, and all
	 * coordinators.
	 * @param county its name; case doesn't matter
	 * @return at most 200, specialists first
	 */
	List<PersonId> serving(String county);

}
