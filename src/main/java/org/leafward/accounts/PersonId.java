package org.leafward.accounts;

import java.util.UUID;

/**
 * Identifier of a person.
 *
 * @param value the identifier
 */
public record PersonId(UUID value) {

	/**
	 * Whose the server's own sites are. Nobody can sign in as them, no mail goes to them,
	 * and no list of people or of sites shows them.
	 */
	public static final PersonId SERVER = new PersonId(UUID.fromString("1eaf0000-0000-8000-8000-000000000001"));

	@Override
	public String toString() {
		return this.value.toString();
	}

}
