package org.leafward.workdays;

import java.util.UUID;

/**
 * Identifier of a volunteer group.
 *
 * @param value the identifier
 */
public record GroupId(UUID value) {

	@Override
	public String toString() {
		return this.value.toString();
	}

}
