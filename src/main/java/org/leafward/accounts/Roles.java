package org.leafward.accounts;

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

}
