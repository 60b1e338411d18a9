package org.leafward.advisories;

import java.util.UUID;

/**
 * Identifier of an advisory, from its first message to its last.
 *
 * @param value the identifier
 */
public record AdvisoryId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
