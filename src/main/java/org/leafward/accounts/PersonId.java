package org.leafward.accounts;

import java.util.UUID;

/**
 * Identifier of a person.
 *
 * @param value the identifier
 */
public record PersonId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
